package org.flexwright.testing.motion;

/** Heights from counted video frames. An event is known to within one frame. */
public final class VideoHeight {

    private VideoHeight() {
    }

    /** Height in m of a hop that stays {@code flight} s in the air, the same posture at take-off and landing. */
    public static double ofFlight(double flight) {
        return BouncingBall.G * flight * flight / 8;
    }

    /** Height in m of a fall from rest, or a rise to rest, that takes {@code time} s. */
    public static double ofFall(double time) {
        return BouncingBall.G * time * time / 2;
    }

    /** Standard uncertainty in s of a time between two events, each within one frame. */
    public static double timeUncertainty(double framesPerSecond) {
        return 1 / (framesPerSecond * Math.sqrt(6));
    }

    /** Standard uncertainty in m of {@link #ofFlight}. */
    public static double flightUncertainty(double flight, double framesPerSecond) {
        return BouncingBall.G * flight / 4 * timeUncertainty(framesPerSecond);
    }

    /** Standard uncertainty in m of {@link #ofFall}. */
    public static double fallUncertainty(double time, double framesPerSecond) {
        return BouncingBall.G * time * timeUncertainty(framesPerSecond);
    }
}

package org.flexwright.mixing.formula;

/** How the working time moves with temperature and with what is allowed to happen until its end. Temperatures in degC, times in any one unit. */
public final class WorkingTime {

    private static final double GAS_CONSTANT = 8.314462618;
    private static final double ZERO_CELSIUS = 273.15;

    private WorkingTime() {
    }

    /** What a time is multiplied by going from one temperature to another: exp[(Ea/R)(1/T2 - 1/T1)]; Ea in kJ/mol. */
    public static double temperatureFactor(double activationEnergy, double fromC, double toC) {
        return Math.exp(1000 * activationEnergy / GAS_CONSTANT * (1 / (toC + ZERO_CELSIUS) - 1 / (fromC + ZERO_CELSIUS)));
    }

    /** Growth time tau of eta = eta0 exp(t/tau) from the time in which the viscosity grew {@code fold} times, above 1. */
    public static double growthTime(double time, double fold) {
        return time / Math.log(fold);
    }

    /** Time until the viscosity has grown {@code fold} times, above 1. */
    public static double timeTo(double fold, double growthTime) {
        return growthTime * Math.log(fold);
    }
}

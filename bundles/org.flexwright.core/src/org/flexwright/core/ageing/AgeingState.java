package org.flexwright.core.ageing;

import java.util.Locale;

import org.flexwright.core.Message;

/** How one reading of an ageing plan stands. */
public enum AgeingState {
    /** It was taken. */
    READ,
    /** Its time has come and it was not taken yet. */
    DUE,
    /** Its time has not come. */
    COMING,
    /** Its time is over and it was not taken. */
    MISSED,
    /** Somebody said why it is not taken. */
    SKIPPED,
    /** The piece failed. */
    FAILED,
    /** Nobody knows from when the age of the piece counts. */
    UNDATED;

    /** The word for it. */
    public String word() {
        return Message.of(AgeingState.class, "state." + name().toLowerCase(Locale.ROOT)).text();
    }
}

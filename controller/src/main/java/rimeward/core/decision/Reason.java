package rimeward.core.decision;

import java.util.Locale;

/**
 * Why a machine runs or rests, with the numbers that decided it.
 *
 * @param measured what was found, in the cause's unit
 * @param limit what it was held against, in the cause's unit
 */
public record Reason(Cause cause, double measured, double limit) {

    /** For a cause that needs no numbers. */
    public static Reason of(Cause cause) {
        return new Reason(cause, 0, 0);
    }

    /** One sentence for a person, without a full stop. */
    public String sentence() {
        return String.format(Locale.ROOT, cause.pattern(), measured, limit);
    }
}

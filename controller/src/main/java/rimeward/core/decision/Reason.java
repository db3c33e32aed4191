package rimeward.core.decision;

import java.util.Locale;
import rimeward.site.Degrees;

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

    /** One sentence for a person, without a full stop; temperatures in °C, as the record has them. */
    public String sentence() {
        return sentence(Degrees.CELSIUS);
    }

    /** The same for somebody who reads these degrees. */
    public String sentence(Degrees degrees) {
        return String.format(
                Locale.ROOT, cause.pattern(degrees), cause.told(measured, degrees), cause.told(limit, degrees));
    }
}

package rimeward.core.outlook;

import java.util.List;

/**
 * The air outside this tunnel as it is expected from now on: what the plan is made from.
 *
 * @param basis what it rests on
 * @param steps in order of time, at least one; from one to the next it goes straight
 */
public record Course(Basis basis, List<Step> steps) {
    public Course {
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("a course needs at least one step");
        }
    }

    /**
     * One moment of it.
     *
     * @param epochS when, s since 1970 UTC
     * @param airC expected outside temperature, °C
     * @param spreadK standard deviation of that, K
     * @param dewPointC expected dew point, °C
     */
    public record Step(long epochS, double airC, double spreadK, double dewPointC) {}

    /** What a course rests on; {@link #inWords()} is for people. */
    public sealed interface Basis {
        String inWords();

        /**
         * A forecast, corrected by what it missed here before.
         *
         * @param nights that the correction was learned from; 0 where it is not corrected yet
         */
        record Forecasted(String source, long issuedEpochS, int nights) implements Basis {
            @Override
            public String inWords() {
                return "the forecast of " + source
                        + (nights == 0 ? ", as it stands" : ", corrected by " + nights + " nights here");
            }
        }

        /** No forecast: predicted from the evening's air and dew point, by the nights before (FAO 2005). */
        record Local(int nights) implements Basis {
            @Override
            public String inWords() {
                return "this evening's air and dew point, by " + nights + " nights here";
            }
        }

        /** Neither a forecast nor enough nights. */
        record Guess() implements Basis {
            @Override
            public String inWords() {
                return "a guess: there is no forecast, and not enough nights were seen yet";
            }
        }
    }
}

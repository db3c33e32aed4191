package rimeward.core.outlook;

import java.util.List;

/**
 * The air outside this tunnel as it is expected from now on: what the plan is made from.
 *
 * @param basis what it rests on
 * @param steps in order of time, at least one; from one to the next it goes straight
 * @param lowestOffK what nights' lowest temperatures were here, beyond what their hours said, K: negative where colder
 */
public record Course(Basis basis, List<Step> steps, double lowestOffK) {
    /** Of which nothing is known beyond its hours. */
    public Course(Basis basis, List<Step> steps) {
        this(basis, steps, 0);
    }

    public Course {
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("a course needs at least one step");
        }
    }

    /** As far as a time; all of it where it begins after that, s since 1970 UTC. */
    public Course until(long epochS) {
        List<Step> before =
                steps.stream().filter(step -> step.epochS() <= epochS).toList();
        return before.isEmpty() ? this : new Course(basis, before, lowestOffK);
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

    /** The lowest temperature of all of it. */
    public Lowest lowest() {
        return Lowest.of(steps, basis.errorMemoryS()).plus(lowestOffK);
    }

    /**
     * The lowest temperature between two times, ends included.
     *
     * @throws IllegalArgumentException if no step lies between them
     */
    public Lowest lowest(long fromEpochS, long untilEpochS) {
        List<Step> between = steps.stream()
                .filter(step -> step.epochS() >= fromEpochS && step.epochS() <= untilEpochS)
                .toList();
        return Lowest.of(between, basis.errorMemoryS()).plus(lowestOffK);
    }

    /** What a course rests on; {@link #inWords()} is for people. */
    public sealed interface Basis {
        /** As good as for ever, s. */
        double LONG_S = 8_640_000;

        String inWords();

        /** Over this time the correlation of one moment's error with a later one's falls by e, s. */
        double errorMemoryS();

        /**
         * A forecast, corrected by what it missed here before.
         *
         * @param nights that the correction was learned from; 0 where it is not corrected yet
         */
        record Forecasted(String source, long issuedEpochS, int nights) implements Basis {
            /** A day, so a night's hours err nearly alike. Own choice. */
            static final double MEMORY_S = 86_400;

            @Override
            public double errorMemoryS() {
                return MEMORY_S;
            }

            @Override
            public String inWords() {
                return "the forecast of " + source
                        + (nights == 0 ? ", as it stands" : ", corrected by " + nights + " nights here");
            }
        }

        /** No forecast: predicted from the evening's air and dew point, by the nights before (FAO 2005). */
        record Local(int nights) implements Basis {
            /** One error all night: it is the night's lowest that was predicted, and not each hour. */
            @Override
            public double errorMemoryS() {
                return LONG_S;
            }

            @Override
            public String inWords() {
                return "this evening's air and dew point, by " + nights + " nights here";
            }
        }

        /** Neither a forecast nor an evening with enough nights before it: the next day is taken to be like the last ones. */
        record Guess() implements Basis {
            /** One error all night: it is the night's lowest that was predicted, and not each hour. */
            @Override
            public double errorMemoryS() {
                return LONG_S;
            }

            @Override
            public String inWords() {
                return "a guess from the last days: there is no forecast, and this night cannot be told from its evening yet";
            }
        }
    }
}

package rimeward.sizing;

import java.util.OptionalDouble;

/** What a measure saves over the stretch of weather that is known. */
public sealed interface Gain {
    record Unknown() implements Gain {}

    /**
     * In so many kWh and so much money.
     *
     * @param cost what the measure itself costs, money
     */
    record Known(double kWh, double money, double cost) implements Gain {
        /** After how many such stretches it has paid for itself; empty where it saves no money. */
        public OptionalDouble paysBackAfter() {
            return money > 0 ? OptionalDouble.of(cost / money) : OptionalDouble.empty();
        }
    }
}

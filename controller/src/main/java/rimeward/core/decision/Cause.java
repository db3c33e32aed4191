package rimeward.core.decision;

import rimeward.site.Degrees;

/**
 * The causes a relay can change for. The pattern takes the measured number first, the limit second; both are of one kind, so both are
 * temperatures, or differences, or neither.
 */
public enum Cause {
    // the floor
    COLD("the coldest bench, %.1f °C, is at or below %.1f °C"),
    COLD_SOON("the coldest bench would be at %.1f °C by the time heat is felt, at or below %.1f °C"),
    WARM_ENOUGH("the coldest bench, %.1f °C, is at or above %.1f °C"),
    WARM_SOON("the coldest bench will be at %.1f °C by the time the heat fades, at or above %.1f °C"),
    HOLDING("it runs on until the coldest bench, %.1f °C, will stay at or above %.1f °C without it"),
    RESTING("the coldest bench, %.1f °C, does not fall to %.1f °C"),
    NOT_ENOUGH("one machine fewer would not do: the coldest bench, %.1f °C, is at or below %.1f °C"),
    ENOUGH_WITHOUT(
            "what runs is enough so far: the coldest bench is at %.1f °C; more joins when it is about to fall to %.1f °C"),
    NOT_FELT_YET("what runs has not had time to be felt: the coldest bench is at %.1f °C and heads for %.1f °C"),
    LIFTED("what runs is enough: the coldest bench, %.1f °C, is at or below %.1f °C but no longer falls"),
    // damp
    DAMP("relative humidity, on average %.0f %%, is at or above %.0f %%"),
    DRY_ENOUGH("relative humidity, on average %.0f %%, is at or below %.0f %%"),
    DRYING("drying: relative humidity is on average %.0f %%, off at %.0f %%"),
    DRY_RESTING("relative humidity, on average %.0f %%, has not risen to %.0f %%"),
    BENCH_NEAR_DEW("the coldest bench is on average %.1f K above the dew point, nearer than %.1f K"),
    FILM_NEAR_DEW("the film is on average about %.1f K above the dew point, nearer than %.1f K"),
    WARM_BY_DRYER("the air is damp, and the dryer's heat does the heater's work for less: %.0f W instead of %.0f W"),
    DRIES_WHILE_COLD(
            "relative humidity, on average %.0f %%, is at or above %.0f %%, so it would be dried soon anyway; now its heat is wanted"),
    DRY_BY_TIMER("humidity is not known, so the dryer runs %.0f of every %.0f minutes"),
    AIRING("outside air is drier: %.1f g/kg against %.1f g/kg inside"),
    DOOR_OPEN("the door is open"),
    NO_AIR_KNOWN("no inside temperature is known"),
    // the guard
    NO_GAP("nobody else holds the floor, and the coldest bench, %.1f °C, needs heat up to %.1f °C"),
    NO_GAP_SOON(
            "nobody else holds the floor; by the time heat is felt the coldest bench would be at %.1f °C, not above %.1f °C"),
    FLOOR_NEAR(
            "the coldest bench, %.1f °C, is near the floor of %.1f °C, below it or heading for it, so all heat is called"),
    HEAT_LOST("a heater stage does not deliver, so every source is tried: %.1f °C, floor %.1f °C"),
    BLIND_CYCLE("no inside temperature is known: %.0f W by the tunnel model, of %.0f W"),
    TOO_HOT("the air, %.1f °C, has reached the hot limit of %.1f °C and has not cooled clear of it"),
    TOO_HOT_UNSEEN("a sensor that is not believed reads above the hot limit"),
    OVERLOAD("the circuit would carry %.0f W; it carries %.0f W for hours"),
    MIN_ON("it has run %.0f s of at least %.0f s"),
    MIN_REST("it has rested %.0f s of at least %.0f s"),
    START_SPACING("%.0f s since its last start; the next may come after %.0f s"),
    START_IN_HAND("it runs on until it could start again: %.0f s since its last start; the next may come after %.0f s"),
    STAGGER("another machine started %.0f s ago; the next may follow after %.0f s"),
    TOO_COLD_FOR_DRYER("the air, %.1f °C, was below the dryer's %.1f °C and has not warmed clear of it"),
    STANDS_DOWN("it stands down for service for %.0f min more"),
    TANK_FULL("the tank is full"),
    DRYER_BLIND("no inside temperature is known, so the dryer's cold limit cannot be kept"),
    DRYER_RESTS("the dryer was asked for an hour and did not dry; it has rested %.0f of %.0f minutes"),
    LAW_FAILED("the control law failed; the guard holds the floor alone"),
    // laws that say no more
    NOT_ASKED("nothing asks for it"),
    ASKED("asked for by the law");

    private static final String CELSIUS = "°C";
    private static final String KELVIN = "%.1f K";

    private final String pattern;

    Cause(String pattern) {
        this.pattern = pattern;
    }

    String pattern(Degrees degrees) {
        return pattern.replace(CELSIUS, degrees.unit()).replace(KELVIN, "%.1f " + degrees.spanUnit());
    }

    /** One of its numbers as the pattern's unit has it. */
    double told(double number, Degrees degrees) {
        if (pattern.contains(CELSIUS)) {
            return degrees.of(number);
        }
        return pattern.contains(KELVIN) ? degrees.ofSpan(number) : number;
    }
}

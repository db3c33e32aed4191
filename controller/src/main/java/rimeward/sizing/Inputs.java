package rimeward.sizing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** The numbers that a sheet rests on, each with its source. While they are gathered, the first to say a number is believed. */
public final class Inputs {
    private final Map<Input, Sourced> each = new EnumMap<>(Input.class);
    private final List<String> faults = new ArrayList<>();
    private final Naming naming;

    public Inputs(Naming naming) {
        this.naming = naming;
    }

    /** What this is called where it is asked for. */
    public String name(String key) {
        return naming.of(key);
    }

    private String name(Input input) {
        return name(input.key());
    }

    /** What the grower typed, if anything. */
    public void given(Input input, @Nullable String text) {
        if (text == null) {
            return;
        }
        OptionalDouble value = WeatherText.number(text.strip().replace('−', '-'));
        if (value.isPresent()) {
            say(input, value.getAsDouble(), Basis.GIVEN, "given");
        } else {
            refuse(name(input) + " is \"" + text + "\", which is no number; write digits with a point, as 4.5: "
                    + input.remedy());
            each.putIfAbsent(input, new Sourced(input.least(), Basis.GIVEN, "given")); // one fault is enough
        }
    }

    /** Says it unless it was said before; what lies outside its limits is a fault. */
    public void say(Input input, double value, Basis basis, String from) {
        if (has(input)) {
            return;
        }
        if (!(value >= input.least() && value <= input.most())) { // NaN is refused too
            refuse(name(input) + " is " + plain(value) + " (" + from + "); it must lie between " + plain(input.least())
                    + " and " + plain(input.most()) + unit(input) + ": " + input.remedy());
        }
        each.putIfAbsent(input, new Sourced(value, basis, from));
    }

    public void refuse(String sentence) {
        faults.add(sentence);
    }

    /** Fills in what is usual where nobody said anything. */
    public void assumeTheRest() {
        for (Input input : Input.values()) {
            input.usual().ifPresent(usual -> each.putIfAbsent(input, usual));
        }
    }

    /**
     * Goes on only while nothing was refused.
     *
     * @throws Refused with every fault
     */
    public void throwIfRefused() throws Refused {
        if (!faults.isEmpty()) {
            throw new Refused(faults);
        }
    }

    public Optional<Sourced> find(Input input) {
        return Optional.ofNullable(each.get(input));
    }

    public boolean has(Input input) {
        return each.containsKey(input);
    }

    /** The number; it must have been said. */
    public double of(Input input) {
        return find(input).orElseThrow().value();
    }

    /** What was said, in the order of {@link Input}. */
    public Map<Input, Sourced> each() {
        return new EnumMap<>(each);
    }

    private static String unit(Input input) {
        return input.unit().isEmpty() ? "" : " " + input.unit().replace("money", "of your currency");
    }

    static String plain(double value) {
        String text = Double.toString(value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}

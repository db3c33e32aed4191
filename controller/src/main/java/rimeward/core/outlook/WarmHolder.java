package rimeward.core.outlook;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Who carries the warm duty through an hour.
 *
 * @param stages heater stages, counted from 1, that run at least some of the time
 * @param dryer whether the dryer's warmth is needed too
 */
public record WarmHolder(List<Integer> stages, boolean dryer) {
    public static final WarmHolder NOBODY = new WarmHolder(List.of(), false);

    public WarmHolder {
        stages = List.copyOf(stages);
    }

    public boolean isNobody() {
        return stages.isEmpty() && !dryer;
    }

    /** "nobody", "the dryer", "heater stages 1 and 2 and the dryer". */
    public String inWords() {
        if (isNobody()) {
            return "nobody";
        }
        String heater = stages.isEmpty() ? "" : (stages.size() == 1 ? "heater stage " : "heater stages ") + numbers();
        return heater + (!stages.isEmpty() && dryer ? " and " : "") + (dryer ? "the dryer" : "");
    }

    private String numbers() {
        int last = stages.size() - 1;
        String before =
                IntStream.range(0, last).mapToObj(i -> stages.get(i).toString()).collect(Collectors.joining(", "));
        return before + (last > 0 ? " and " : "") + stages.get(last);
    }
}

package rimeward.service;

import java.util.Comparator;
import rimeward.site.Plant;
import rimeward.site.Site;

/** What the grower reads after asking for another floor. */
final class FloorWords {
    private FloorWords() {}

    static String taken(Site settings, double floorC) {
        String at = "The floor is " + shown(floorC) + " °C from now on, and heat comes on at "
                + shown(floorC + settings.targets().guardMarginK()) + " °C. ";
        return floorC == settings.floorC()
                ? at + "That is the settings' own."
                : at + "The settings say " + shown(settings.floorC()) + " °C; their floor comes back when they change.";
    }

    static String refused(Site settings, double floorC) {
        String range = "Ask for " + shown(settings.lowestFloorC()) + " to " + shown(settings.highestFloorC()) + " °C.";
        if (floorC < settings.lowestFloorC()) {
            Plant tenderest = settings.plants().stream()
                    .max(Comparator.comparingDouble(Plant::minimumC))
                    .orElseThrow();
            return "The floor stays: at " + shown(floorC) + " °C it would be too cold for " + tenderest.name()
                    + ", which must not get colder than " + shown(tenderest.minimumC()) + " °C. " + range;
        }
        return "The floor stays: at " + shown(floorC) + " °C it would be above "
                + (settings.targets().leavesRoomAbove(floorC)
                        ? "what any plant of a cold tunnel asks for. "
                        : "what the hot limit of " + shown(settings.targets().hotC()) + " °C leaves room for. ")
                + range;
    }

    private static String shown(double c) {
        return Double.toString(StrictMath.rint(c * 100) / 100);
    }
}

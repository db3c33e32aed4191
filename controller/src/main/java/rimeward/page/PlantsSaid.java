package rimeward.page;

import java.util.Map;
import rimeward.core.Outcome;
import rimeward.core.judgement.Inside;
import rimeward.site.Degrees;
import rimeward.site.Site;

/** Whether the plants are safe, in a word and in a sentence. */
final class PlantsSaid {
    private PlantsSaid() {}

    static Map<String, Object> of(Site site, Outcome outcome) {
        Members said = new Members();
        if (!(outcome.judgement().inside() instanceof Inside.Seen seen)) {
            return said.put("state", "unseen")
                    .put("sentence", unseen((Inside.Unseen) outcome.judgement().inside()))
                    .word("trust", outcome.judgement().trust())
                    .map();
        }
        double marginK = seen.coldestC() - outcome.floorC();
        return said.put("state", state(site, marginK))
                .put("sentence", sentence(site, seen, outcome.floorC()))
                .number("coldestC", seen.coldestC(), 2)
                .put("coldestSensor", Believed.place(site, seen.coldestSensor()))
                .number("marginK", marginK, 2)
                .number("slopeKPerH", slopeKPerS(seen) * 3600, 2)
                .word("trust", outcome.judgement().trust())
                .map();
    }

    /** Near is where heat must be on at the latest. */
    private static String state(Site site, double marginK) {
        return marginK < 0 ? "under" : marginK < site.targets().guardMarginK() ? "near" : "safe";
    }

    private static String sentence(Site site, Inside.Seen seen, double floorC) {
        Degrees degrees = site.degrees();
        double marginK = seen.coldestC() - floorC;
        String where = Believed.place(site, seen.coldestSensor()) + " is coldest, at " + degrees.text(seen.coldestC());
        return where + ", " + degrees.span(StrictMath.abs(marginK)) + (marginK < 0 ? " below" : " above")
                + " the floor of " + degrees.text(floorC) + ".";
    }

    private static String unseen(Inside.Unseen unseen) {
        long minutes = (long) (unseen.forS() / 60);
        return "No temperature inside is believed, for " + (minutes < 1 ? "less than a minute" : minutes + " min")
                + ".";
    }

    private static double slopeKPerS(Inside.Seen seen) {
        return seen.benches().stream()
                .filter(bench -> bench.lowestC() == seen.coldestC())
                .mapToDouble(Inside.Bench::slopeKPerS)
                .findFirst()
                .orElse(0);
    }
}

package rimeward.alert;

import java.util.Locale;
import rimeward.core.decision.Airing;
import rimeward.core.judgement.Damp;
import rimeward.core.judgement.Judgement;
import rimeward.core.judgement.Outside;
import rimeward.core.judgement.OutsideDamp;
import rimeward.site.Site;

/** Where no fan airs the tunnel, somebody must: when to open the door, and when to close it again. */
final class AiringAdvice {
    private AiringAdvice() {}

    /** Whether the door should stand open: the air is damp, and outside air would dry it without chilling the plants. */
    static boolean holds(Site site, Judgement judgement, boolean didHold) {
        return site.ventRelay().isEmpty() && isDamp(site, judgement, didHold) && Airing.helps(site, judgement, didHold);
    }

    private static boolean isDamp(Site site, Judgement judgement, boolean didHold) {
        double limitPercent =
                didHold ? site.targets().dryOffPercent() : site.targets().dryOnPercent();
        return judgement.damp() instanceof Damp.Seen damp && damp.wettestRhPercent() >= limitPercent;
    }

    static String open(Judgement judgement) {
        String than = judgement.damp() instanceof Damp.Seen damp
                        && judgement.outside() instanceof Outside.Seen outside
                        && outside.damp() instanceof OutsideDamp.Seen outsideDamp
                ? String.format(
                        Locale.ROOT,
                        " (%.1f g/kg against %.1f g/kg)",
                        outsideDamp.humidityKgPerKg() * 1000,
                        damp.humidityKgPerKg() * 1000)
                : "";
        return "It is damp inside, and outside air is drier" + than
                + " and warm enough. Open the door. You will be told when to close it again.";
    }

    static String close(Site site, Judgement judgement) {
        return "Close the door again, if it is open: "
                + (judgement.damp() instanceof Damp.Seen && !isDamp(site, judgement, true)
                        ? "the air inside is dry enough."
                        : "outside air is no longer drier and warm enough, or is not known any more.");
    }
}

package rimeward.alert;

import java.util.Locale;
import rimeward.core.Outcome;
import rimeward.core.judgement.Outside;
import rimeward.core.outlook.ChanceWords;
import rimeward.core.outlook.FrostAlert;
import rimeward.core.outlook.FrostChance;
import rimeward.core.outlook.Outlook;
import rimeward.core.tunnel.Figure;
import rimeward.core.tunnel.TunnelModel;
import rimeward.site.Degrees;
import rimeward.site.Site;

/** Whether it may grow colder than all heat together can hold: by the forecast, or else by how the outside temperature falls. */
final class FrostWatch {
    /** Over so long the fall is seen, s. Own choice: a gust passes, an evening does not. */
    private static final double SEEN_OVER_S = 3600;

    /** So far ahead a fall is believed, s. Own choice: time enough to bring a second heater. */
    private static final double AHEAD_S = 7200;

    private static final double CLEAR_K = 1;

    /** How well the tunnel's loss is known, as a share. Own choice: about what a fortnight teaches. */
    private static final double LOSS_ERROR = 0.1;

    private static final double HOUR_S = 3600;

    private double laggingC;
    private boolean begun;

    boolean holds(Site site, TunnelModel model, Outcome outcome, boolean did, double dtS) {
        follow(outcome, dtS);
        double limitC = capabilityC(site, model, outcome) + (did ? CLEAR_K : 0);
        if (limitC >= site.floorC()) {
            return did; // no heater gives heat: that is told already, and this is not over
        }
        if (outcome.outlook() instanceof Outlook.Night night) {
            return new FrostAlert(did)
                    .after(chance(site, model, outcome, night))
                    .stands();
        }
        return outcome.judgement().outside() instanceof Outside.Seen seen
                && seen.airC() + AHEAD_S * StrictMath.min(0, slopeKPerS(seen)) < limitC;
    }

    private static double chance(Site site, TunnelModel model, Outcome outcome, Outlook.Night night) {
        double heldC = capabilityC(site, model, outcome);
        return FrostChance.of(night, new Figure(heldC, LOSS_ERROR * (site.floorC() - heldC)));
    }

    private void follow(Outcome outcome, double dtS) {
        if (outcome.judgement().outside() instanceof Outside.Seen seen) {
            laggingC = begun ? laggingC + (seen.airC() - laggingC) * dtS / (SEEN_OVER_S + dtS) : seen.airC();
            begun = true;
        }
    }

    /** Once it has fallen for a while, a first-order lag trails by its time constant. */
    private double slopeKPerS(Outside.Seen seen) {
        return (seen.airC() - laggingC) / SEEN_OVER_S;
    }

    /** Of the stages that are not known to fail. */
    private static double capabilityC(Site site, TunnelModel model, Outcome outcome) {
        double heatW = 0;
        for (int i = 0; i < site.heater().stages().size(); i++) {
            heatW += outcome.deliveries().failed().has(i)
                    ? 0
                    : site.heater().stages().get(i).ratedW();
        }
        return model.capabilityC(site.floorC(), heatW);
    }

    String text(Site site, TunnelModel model, Outcome outcome) {
        Degrees degrees = site.degrees();
        double limitC = capabilityC(site, model, outcome);
        String holds = " The heaters hold " + degrees.text(site.floorC()) + " inside down to about "
                + degrees.text(limitC) + " outside.";
        String act = " Cover the plants or bring in more heat.";
        if (outcome.outlook() instanceof Outlook.Night night) {
            return "Tonight it may fall to " + degrees.text(night.lowestOutsideC()) + " outside, give or take "
                    + degrees.span(night.spreadK()) + "." + holds + " The chance that the floor cannot be held is "
                    + ChanceWords.percent(chance(site, model, outcome, night)) + "." + act;
        }
        if (!(outcome.judgement().outside() instanceof Outside.Seen seen)) {
            return "It was about to grow too cold when the outside sensor was lost." + holds + act;
        }
        double slopeKPerS = slopeKPerS(seen);
        String falls = seen.airC() <= limitC || slopeKPerS >= 0
                ? ""
                : String.format(
                        Locale.ROOT,
                        " and falls %s an hour; that point is reached in about %.1f hours",
                        degrees.span(-slopeKPerS * HOUR_S),
                        (seen.airC() - limitC) / -slopeKPerS / HOUR_S);
        return "It is " + degrees.text(seen.airC()) + " outside" + falls + "." + holds + act;
    }
}

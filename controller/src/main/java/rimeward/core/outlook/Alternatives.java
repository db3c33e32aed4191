package rimeward.core.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import rimeward.core.outlook.NightRun.Moment;
import rimeward.core.tunnel.Figure;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.site.Drying;
import rimeward.site.Site;

/**
 * The counterfactual: what plainer ways would take in a night, and how cold they would let it get, by the same model.
 *
 * @param past whether the night was, or is to come
 * @param tunnelNights the tunnel was learned from so many; 0: it is assumed
 */
public record Alternatives(boolean past, int tunnelNights, List<Alternative> all) {
    private static final ToDoubleFunction<NightRun> KWH = run -> run.sum(Moment::kWh);
    private static final ToDoubleFunction<NightRun> COST = run -> run.sum(Moment::cost);

    public Alternatives {
        all = List.copyOf(all);
    }

    /** Of a night that is planned: against what our law would take by the model. */
    public static Alternatives planned(
            Site site, TunnelEstimate estimate, Course course, PlanStart start, PlanChoices choices) {
        Tonight night = Tonight.of(site, course, start, choices);
        Nights ours = Nights.of(night, estimate, NightPlan.ours(night));
        List<Alternative> all = new ArrayList<>();
        for (Alternative.Way way : ways(site)) {
            Nights theirs = Nights.of(night, estimate, law(site, way));
            all.add(of(way, theirs, theirs.figureLess(ours, KWH), theirs.figureLess(ours, COST)));
        }
        return new Alternatives(false, estimate.nights(), all);
    }

    /**
     * Of a night that was: what was truly taken, and beside it what the model has another way take more or less than ours, so that what the
     * model gets wrong of both alike does not count as saved.
     *
     * @param course the outside as it was seen, with the spread of its sensor
     * @param start the tunnel as that night began
     * @param kWh what the machines took while the course lasted, kWh
     * @param cost what that cost, in the tariff's currency
     */
    public static Alternatives past(
            Site site,
            TunnelEstimate estimate,
            Course course,
            PlanStart start,
            PlanChoices choices,
            double kWh,
            double cost) {
        Tonight night = Tonight.of(site, course, start, choices);
        Nights ours = Nights.of(night, estimate, NightPlan.ours(night));
        List<Alternative> all = new ArrayList<>();
        for (Alternative.Way way : ways(site)) {
            Nights theirs = Nights.of(night, estimate, law(site, way));
            all.add(of(way, theirs, less(theirs.figureLess(ours, KWH), kWh), less(theirs.figureLess(ours, COST), cost))
                    .beside(kWh, cost));
        }
        return new Alternatives(true, estimate.nights(), all);
    }

    /** Nothing takes less than nothing. */
    private static Figure less(Figure saved, double ours) {
        return new Figure(StrictMath.max(-ours, saved.value()), saved.standardError());
    }

    private static Alternative of(Alternative.Way way, Nights theirs, Figure savedKWh, Figure savedCost) {
        Figure benchC = theirs.figure(run -> run.least(Moment::benchC));
        return new Alternative(way, theirs.figure(KWH), theirs.figure(COST), benchC, savedKWh, savedCost);
    }

    private static List<Alternative.Way> ways(Site site) {
        return site.drying() instanceof Drying.Dryer
                ? List.of(Alternative.Way.values())
                : List.of(Alternative.Way.THERMOSTAT, Alternative.Way.BY_HAND);
    }

    private static NightLaw.Maker law(Site site, Alternative.Way way) {
        return switch (way) {
            case THERMOSTAT -> PlainNight.thermostat(site);
            case DRYER_ALONE -> PlainNight.dryerAlone(site);
            case BY_HAND -> PlainNight.byHand(site);
        };
    }

    /** For people: cost and cold of each, and what it rests on. */
    public List<String> sentences(Site site) {
        List<String> sentences = new ArrayList<>();
        for (Alternative each : all) {
            sentences.add(each.costSentence(site, past) + " " + each.coldSentence(site, past));
        }
        sentences.add(
                tunnelNights == 0
                        ? "All this is a guess: the tunnel is assumed from the settings, and not learned yet."
                        : "By the tunnel as learned from " + tunnelNights
                                + (tunnelNights == 1 ? " night." : " nights."));
        return sentences;
    }
}

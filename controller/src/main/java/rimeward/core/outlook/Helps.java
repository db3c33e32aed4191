package rimeward.core.outlook;

import java.util.ArrayList;
import java.util.List;
import rimeward.air.AirConstants;
import rimeward.core.tunnel.Figure;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.site.RelaySet;
import rimeward.site.Role;
import rimeward.site.Site;

/** What would help, worked out from the step at which the floor is hardest to hold. */
final class Helps {
    private final Tonight night;
    private final TunnelEstimate estimate;
    private final Nights nights;
    private final List<Help> helps = new ArrayList<>();

    private Helps(Tonight night, TunnelEstimate estimate, Nights nights) {
        this.night = night;
        this.estimate = estimate;
        this.nights = nights;
    }

    static List<Help> of(Tonight night, TunnelEstimate estimate, Nights nights, double chanceCold, Tank tank) {
        Helps all = new Helps(night, estimate, nights);
        all.machines();
        if (chanceCold > night.choices().statedChance()) {
            all.heat();
        }
        if (tank instanceof Tank.FullAt full) {
            all.helps.add(new Help.EmptyTank(full.epochS()));
        }
        return all.helps;
    }

    private void machines() {
        Site site = night.site();
        RelaySet out = night.choices().out();
        for (int i = 0; i < site.machines().size(); i++) {
            if (out.has(i) && site.machines().get(i).role() != Role.VENT_FAN) {
                PlanChoices with = night.choices().without(out.without(i));
                Nights then = Nights.of(
                        night.with(with), estimate, world -> new DutyNight(site, with, world, DutyNight.Raise.NONE));
                helps.add(new Help.MachineBack(site.machines().get(i).id(), worstChance(then)));
            }
        }
    }

    private static double worstChance(Nights nights) {
        return nights.chanceCold(worst(nights));
    }

    static int worst(Nights nights) {
        int worst = 0;
        double most = 0;
        for (int step = 0; step < nights.likeliest().moments().size(); step++) {
            double chance = nights.chanceCold(step);
            if (chance > most) {
                most = chance;
                worst = step;
            }
        }
        return worst;
    }

    private void heat() {
        int worst = worst(nights);
        Figure spareW = nights.spareW(worst);
        double stated = night.choices().statedChance();
        double missingW = wantedSpreads(stated) * spareW.standardError() - spareW.value();
        double floorAirC = night.site().floorC() + night.choices().coldCornerK();
        double liftK = floorAirC - nights.likeliest().moments().get(worst).outsideC();
        if (missingW <= 0 || liftK <= 0) {
            return;
        }
        double lossWPerK = estimate.heatLossWPerK().value();
        helps.add(new Help.MoreHeat(missingW, stated));
        if (missingW / liftK < lossWPerK) {
            helps.add(new Help.LessLoss(missingW / liftK, missingW / liftK / lossWPerK));
        }
        helps.add(new Help.Cover(
                missingW / (lossWPerK + estimate.massCouplingWPerK().value())));
        helps.add(new Help.Close(estimate.airExchangeKgPerS().value() * AirConstants.DRY_AIR_HEAT_J_PER_KG_K * liftK));
    }

    /** How many standard deviations to be clear of, for this chance: the normal distribution backwards, by halving. */
    static double wantedSpreads(double chance) {
        double low = -8;
        double high = 8;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (Below.normal(-middle) > chance) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}

package rimeward.sim.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.adapter.config.SiteSettings;
import rimeward.core.decision.ControlLaw;
import rimeward.core.decision.Decision;
import rimeward.core.decision.LawState;
import rimeward.core.decision.Situation;
import rimeward.core.judgement.Damp;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Judgement;
import rimeward.core.judgement.Outside;
import rimeward.core.judgement.Trust;
import rimeward.core.outlook.Outlook;
import rimeward.core.tunnel.TunnelModel;
import rimeward.core.watch.Deliveries;
import rimeward.core.watch.Delivery;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** What a grower has without Rimeward, at Hallin Rigg: floor 4 °C. */
class RivalLawsTest {
    private final Site site = SiteSettings.read(Path.of("..", "config", "tunnel.toml"));
    private final Inside blind = new Inside.Unseen(60, false);
    private LawState state = LawState.NOTHING;

    private RelaySet wish(ControlLaw law, Inside inside, Outlook outlook) {
        Judgement judgement =
                new Judgement(Trust.FULL, inside, Damp.UNSEEN, Outside.UNSEEN, false, false, List.of(), List.of());
        Deliveries deliveries =
                new Deliveries(Collections.nCopies(4, Delivery.OFF), RelaySet.none(), RelaySet.none(), false);
        Situation now =
                new Situation(site, 5, judgement, outlook, TunnelModel.assumed(site), RelaySet.none(), deliveries);
        Decision decision = law.decide(now, state);
        assertThat(decision.reasons()).hasSameSizeAs(site.machines());
        state = decision.next();
        return decision.wish();
    }

    private static Inside middle(double middleC) {
        return new Inside.Seen(middleC - 2, middleC, middleC + 1, 0, 0);
    }

    private static Outlook night(long number, double lowestC) {
        return new Outlook.Night(number, lowestC, 1, 3600);
    }

    @Test
    void theThermostatMindsTheMiddleOnlyAndStaysAsItIsWhenBlind() {
        ControlLaw law = new Thermostat();
        state = law.start(site);
        assertThat(wish(law, middle(5.1), Outlook.NONE)).isEqualTo(RelaySet.none());
        assertThat(wish(law, middle(5.0), Outlook.NONE)).isEqualTo(site.heaterStages());
        assertThat(wish(law, middle(6.9), Outlook.NONE)).isEqualTo(site.heaterStages());
        assertThat(wish(law, blind, Outlook.NONE)).isEqualTo(site.heaterStages());
        assertThat(wish(law, middle(7.0), Outlook.NONE)).isEqualTo(RelaySet.none());
        assertThat(wish(law, blind, Outlook.NONE)).isEqualTo(RelaySet.none());
    }

    @Test
    void byHandOneChoiceHoldsForTheNight() {
        ControlLaw law = new ByHand();
        state = law.start(site);
        assertThat(wish(law, blind, Outlook.NONE)).isEqualTo(RelaySet.none());
        assertThat(wish(law, blind, night(1, 5.0))).isEqualTo(RelaySet.none());
        assertThat(wish(law, blind, night(2, 4.9))).isEqualTo(site.dryerRelay());
        assertThat(wish(law, blind, night(2, -9))).as("the same night").isEqualTo(site.dryerRelay());
        assertThat(wish(law, blind, Outlook.NONE)).as("in the morning").isEqualTo(RelaySet.none());
        assertThat(wish(law, blind, night(3, 0.9))).isEqualTo(site.heaterStages());
    }

    @Test
    void theOthersNeverThink() {
        assertThat(wish(new DryerAlone(), blind, Outlook.NONE)).isEqualTo(site.dryerRelay());
        assertThat(wish(new AlwaysOn(), blind, night(1, -5))).isEqualTo(site.heaterStages());
    }
}

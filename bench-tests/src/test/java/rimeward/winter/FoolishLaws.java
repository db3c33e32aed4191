package rimeward.winter;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.BiFunction;
import rimeward.core.decision.Cause;
import rimeward.core.decision.ControlLaw;
import rimeward.core.decision.Decision;
import rimeward.core.decision.LawState;
import rimeward.core.decision.Reason;
import rimeward.core.decision.Situation;
import rimeward.sim.fault.SeededStream;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** Laws that nobody should use, and that the guard must make harmless. */
final class FoolishLaws {
    private FoolishLaws() {}

    static List<ControlLaw> all() {
        return List.of(
                law("always-off", (now, beat) -> RelaySet.none()),
                law("all-on", (now, beat) -> everything(now.site())),
                law("flapping", (now, beat) -> beat % 2 == 0 ? everything(now.site()) : RelaySet.none()),
                law(
                        "dice",
                        (now, beat) -> RelaySet.of(SeededStream.named(beat, "dice")
                                .below(everything(now.site()).bits() + 1))),
                law("backwards", (now, beat) -> everything(now.site()).minus(now.closed())),
                new Throwing(),
                new Rubbish());
    }

    private static RelaySet everything(Site site) {
        return RelaySet.of((1 << site.machines().size()) - 1);
    }

    private record Beat(long number) implements LawState {}

    private static ControlLaw law(String name, BiFunction<Situation, Long, RelaySet> wish) {
        return new ControlLaw() {
            @Override
            public String name() {
                return name;
            }

            @Override
            public LawState start(Site site) {
                return new Beat(0);
            }

            @Override
            public Decision decide(Situation now, LawState state) {
                long beat = ((Beat) state).number();
                return new Decision(wish.apply(now, beat), asked(now.site()), new Beat(beat + 1));
            }
        };
    }

    private static List<Reason> asked(Site site) {
        return Collections.nCopies(site.machines().size(), Reason.of(Cause.ASKED));
    }

    /** Fails in a new way each time. */
    private static final class Throwing implements ControlLaw {
        @Override
        public String name() {
            return "throwing";
        }

        @Override
        public LawState start(Site site) {
            return LawState.NOTHING;
        }

        @Override
        public Decision decide(Situation now, LawState state) {
            switch ((now.judgement().airVerdicts().size() + now.closed().bits()) % 3) {
                case 0 -> throw new IllegalStateException("out of order");
                case 1 -> throw new StackOverflowError();
                default -> throw new NoClassDefFoundError("nowhere");
            }
        }
    }

    /** Answers with what is no answer. */
    private static final class Rubbish implements ControlLaw {
        @Override
        public String name() {
            return "rubbish";
        }

        @Override
        public LawState start(Site site) {
            return new Beat(0);
        }

        @Override
        @SuppressWarnings("NullAway") // that is the point
        public Decision decide(Situation now, LawState state) {
            long beat = state instanceof Beat count ? count.number() : 0;
            Beat next = new Beat(beat + 1);
            return switch ((int) (beat % 5)) {
                case 0 -> null;
                case 1 -> new Decision(RelaySet.of(-1), asked(now.site()), next);
                case 2 -> new Decision(RelaySet.of(1 << 12), List.of(), next);
                case 3 -> new Decision(null, null, next);
                default -> new Decision(everything(now.site()), new ArrayList<>(), null);
            };
        }
    }
}

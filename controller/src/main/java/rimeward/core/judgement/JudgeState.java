package rimeward.core.judgement;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rimeward.site.Site;

/**
 * What the judge remembers from one tick to the next.
 *
 * @param air one for each sensor
 * @param rh one for each sensor
 * @param blindForS how long no inside temperature has been believed, s
 * @param sinceLearnedS since the benches' habits were last learned from, s
 */
public record JudgeState(List<AirTrack> air, List<RhTrack> rh, double blindForS, double sinceLearnedS) {
    public static JudgeState start(Site site) {
        int sensors = site.sensors().size();
        return new JudgeState(
                Collections.nCopies(sensors, AirTrack.START), Collections.nCopies(sensors, RhTrack.START), 0, 0);
    }

    /** What must survive a restart. */
    public List<BenchHabit> habits(Site site) {
        List<BenchHabit> habits = new ArrayList<>();
        for (int i = 0; i < air.size(); i++) {
            if (air.get(i).usualK() != 0) {
                habits.add(new BenchHabit(site.sensors().get(i).id(), air.get(i).usualK()));
            }
        }
        return habits;
    }

    /** After a restart: nothing is known but the habits of those benches that there still are. */
    public static JudgeState resume(Site site, List<BenchHabit> habits) {
        JudgeState fresh = start(site);
        List<AirTrack> air = new ArrayList<>(fresh.air());
        for (int i = 0; i < air.size(); i++) {
            for (BenchHabit habit : habits) {
                if (habit.sensor().equals(site.sensors().get(i).id())) {
                    air.set(i, AirTrack.START.usually(Habit.bounded(habit.usualK())));
                }
            }
        }
        return new JudgeState(List.copyOf(air), fresh.rh(), 0, 0);
    }

    /** What the sensors said before a power cut is too old to compare with; the benches' habits stay. */
    public JudgeState afterOutage() {
        return new JudgeState(
                air.stream().map(AirTrack::forgotten).toList(),
                Collections.nCopies(rh.size(), RhTrack.START),
                0,
                sinceLearnedS);
    }
}

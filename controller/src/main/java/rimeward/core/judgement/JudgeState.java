package rimeward.core.judgement;

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

    /** What the sensors said before a power cut is too old to compare with; the benches' habits stay. */
    public JudgeState afterOutage() {
        return new JudgeState(
                air.stream().map(AirTrack::forgotten).toList(),
                Collections.nCopies(rh.size(), RhTrack.START),
                0,
                sinceLearnedS);
    }
}

package rimeward.app;

import java.io.PrintWriter;
import rimeward.alert.Alert;
import rimeward.assembly.Audience;
import rimeward.core.Stepped;
import rimeward.core.judgement.Inside;
import rimeward.core.order.Answer;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.PastNight;
import rimeward.core.outlook.PlanText;
import rimeward.core.tunnel.Lesson;
import rimeward.core.tunnel.LessonText;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** What people read of the running service in the system's journal: each switch and each alert. */
final class Log implements Audience {
    private final Site site;
    private final PrintWriter out;
    private RelaySet closed = RelaySet.none();
    private boolean began;

    Log(Site site, PrintWriter out) {
        this.site = site;
        this.out = out;
    }

    @Override
    public void says(String line) {
        print("rimeward: " + line);
    }

    @Override
    public void decided(Stepped stepped) {
        RelaySet now = stepped.outcome().guarded().closed();
        if (!began || !now.equals(closed)) {
            began = true;
            closed = now;
            String coldest = stepped.outcome().judgement().inside() instanceof Inside.Seen seen
                    ? Plain.number(seen.coldestC()) + " °C"
                    : "unknown";
            print("coldest bench " + coldest + ", on: " + site.inWords(now));
        }
    }

    @Override
    public void answered(Answer answer) {
        print((answer.taken() ? "order taken, " : "order refused, ") + answer.order() + ": " + answer.text());
    }

    @Override
    public void promised(NightPlan plan) {
        print("plan: " + PlanText.brief(plan, site));
    }

    @Override
    public void learned(Lesson lesson) {
        print("tunnel: " + LessonText.brief(lesson));
    }

    @Override
    public void reckoned(PastNight night) {
        print("night over: " + night.inWords(site));
    }

    @Override
    public void told(Alert alert) {
        print((alert.isNew() ? "ALERT " + alert.kind().title() + ": " : "") + alert.text());
    }

    private synchronized void print(String line) {
        out.println(line);
        out.flush();
    }
}

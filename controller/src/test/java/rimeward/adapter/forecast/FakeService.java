package rimeward.adapter.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** A service that answers as told, again and again, and remembers what it was asked. */
final class FakeService implements Wire {
    final List<Optional<String>> asked = new ArrayList<>();
    private Reply reply = reply(503, "");
    private String silence = "It is not there.";

    void isSilent(String why) {
        silence = why;
    }

    void answers(Reply next) {
        silence = "";
        reply = next;
    }

    void answers(int status) {
        answers(reply(status, ""));
    }

    /** A forecast that holds for half an hour. */
    void answersWith(String body) {
        answers(new Reply(200, body, Optional.of("Sat, 10 Jan 2026 14:21:07 GMT"), OptionalLong.of(1800), NOT_SAID));
    }

    static final OptionalLong NOT_SAID = OptionalLong.empty();

    static Reply reply(int status, String body) {
        return new Reply(status, body, Optional.empty(), NOT_SAID, NOT_SAID);
    }

    static Reply retryAfter(int status, long s) {
        return new Reply(status, "", Optional.empty(), NOT_SAID, OptionalLong.of(s));
    }

    static Reply freshFor(int status, String body, long s) {
        return new Reply(status, body, Optional.empty(), OptionalLong.of(s), NOT_SAID);
    }

    @Override
    public Reply ask(Optional<String> lastModified) throws NoReply {
        asked.add(lastModified);
        if (!silence.isEmpty()) {
            throw new NoReply(silence);
        }
        return reply;
    }

    @Override
    public void close() {}
}

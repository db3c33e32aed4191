package rimeward.adapter.forecast;

import java.util.Optional;

/** Puts the question to the service. Comes back within a bounded time. */
interface Wire extends AutoCloseable {
    /**
     * Asks once.
     *
     * @param lastModified of the forecast that we have
     * @throws NoReply with a sentence for people
     */
    Reply ask(Optional<String> lastModified) throws NoReply;

    @Override
    void close();
}

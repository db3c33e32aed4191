package rimeward.adapter.forecast;

import java.util.Optional;
import java.util.OptionalLong;

/**
 * What a service answered.
 *
 * @param status by RFC 9110
 * @param body empty where the status brings none that we need
 * @param lastModified to be sent back letter by letter with the next question
 * @param freshForS from the service's own Date until its Expires, s; not above 0 where it has expired already
 * @param retryAfterS how long we are asked to stay away, s
 */
record Reply(
        int status, String body, Optional<String> lastModified, OptionalLong freshForS, OptionalLong retryAfterS) {}

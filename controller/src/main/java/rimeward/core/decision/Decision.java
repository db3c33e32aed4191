package rimeward.core.decision;

import java.util.List;
import rimeward.site.RelaySet;

/**
 * What a law would like.
 *
 * @param wish the machines it would run
 * @param reasons one for each of the site's machines, why it should run or rest
 * @param next what the law will be handed at the next tick
 */
public record Decision(RelaySet wish, List<Reason> reasons, LawState next) {}

package rimeward.core.judgement;

/** The judge's answer, and what it will be handed at the next tick. */
public record Judged(Judgement judgement, JudgeState next) {}

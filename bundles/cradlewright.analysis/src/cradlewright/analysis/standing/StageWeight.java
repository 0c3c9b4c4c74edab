package cradlewright.analysis.standing;

import java.util.Optional;

/**
 * What a car, or one piece of it, weighs in a stage, wherever its pieces stand.
 *
 * @param stageId the stage
 * @param stage name of the stage
 * @param piece name of the piece when it is the weight of one piece, without temporary loads; nothing for all that is on
 * @param weight the parts that are on, and the temporary loads when it is all that is on
 */
public record StageWeight(String stageId, String stage, Optional<String> piece, Weight weight) {
}

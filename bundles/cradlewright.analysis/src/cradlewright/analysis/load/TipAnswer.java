package cradlewright.analysis.load;

/**
 * How many times a push can be laid on before something falls over.
 *
 * @param situation the push
 * @param question which of the two questions
 * @param answered whether the calculation came to an end and every input was there
 * @param ratio how many times the push can be laid on; infinite when it upsets nothing
 * @param low the same with what is carried at the end of its give or take that is worst for it
 * @param standsAlone whether it stands without the push
 * @param over over what it falls, in words; empty when nothing does
 */
public record TipAnswer(Situation situation, Question question, boolean answered, double ratio, double low, boolean standsAlone,
        String over) {

    /** Tipping is asked twice. */
    public enum Question {
        /** The shell on what it stands on, with that taken as ground. */
        ON_SUPPORTS,
        /** Shell and dolly locked together on the floor. */
        ON_FLOOR
    }
}

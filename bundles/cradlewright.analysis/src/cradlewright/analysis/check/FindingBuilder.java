package cradlewright.analysis.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Gathers a finding; title, clause, caution and formulas come from the check itself. */
public final class FindingBuilder {

    private final CheckInfo info;
    private final Subject subject;
    private final String objectId;
    private final String objectName;
    private final List<String> missing = new ArrayList<>();
    private final List<Remedy> remedies = new ArrayList<>();
    private final List<Input> inputs = new ArrayList<>();
    private String situation = "";
    private String ratedBy = "";
    private Optional<Amount> demand = Optional.empty();
    private Optional<Amount> capacity = Optional.empty();
    private boolean least;

    /** Starts a finding of a check about an object of a subject. */
    public FindingBuilder(CheckInfo info, Subject subject, String objectId, String objectName) {
        this.info = info;
        this.subject = subject;
        this.objectId = objectId;
        this.objectName = objectName;
    }

    /** Says what was going on, in words. */
    public FindingBuilder situation(String words) {
        situation = words;
        return this;
    }

    /** Says what is asked of the object and what it can give, rated by what. */
    public FindingBuilder against(Amount asked, Amount given, String rating) {
        demand = Optional.of(asked);
        capacity = Optional.of(given);
        ratedBy = rating;
        least = false;
        return this;
    }

    /** Says how much is wanted at least and how much was found, and what that is. */
    public FindingBuilder atLeast(Amount wanted, Amount found, String what) {
        against(wanted, found, what);
        least = true;
        return this;
    }

    /** Notes a number that went in. */
    public FindingBuilder input(String name, Amount amount, String origin) {
        inputs.add(new Input(name, amount, origin, false));
        return this;
    }

    /** Notes a number that the answer cannot be read without, so that every report shows it. */
    public FindingBuilder shown(String name, Amount amount, String origin) {
        inputs.add(new Input(name, amount, origin, true));
        return this;
    }

    /** Notes something to do. */
    public FindingBuilder remedy(Remedy remedy) {
        remedies.add(remedy);
        return this;
    }

    /** Notes some things to do, or advice when there is none of them. */
    public FindingBuilder remediesOr(List<Remedy> some, String advice) {
        remedies.addAll(some.isEmpty() ? List.of(Remedy.advice(advice)) : some);
        return this;
    }

    /** Ends with a verdict and its reason. */
    public Finding say(Verdict verdict, String words) {
        return new Finding(info.id(), subject, objectId, objectName, verdict, words, situation, demand, capacity, least, ratedBy,
                info.clause(),
                info.caution(), missing, remedies, inputs, info.formulas());
    }

    /** Ends with CAN'T SAY and what is missing, each with what to do about it. */
    public Finding cantSay(String words, List<String> whatIsMissing) {
        missing.addAll(whatIsMissing);
        return say(Verdict.CANT_SAY, words);
    }
}

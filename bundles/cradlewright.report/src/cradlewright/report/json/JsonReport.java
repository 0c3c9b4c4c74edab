package cradlewright.report.json;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Harm;
import cradlewright.analysis.check.Input;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.load.Carried;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.overview.CarOverview;
import cradlewright.analysis.overview.CarStand;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import cradlewright.report.VisitNumbers;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The answers of a run as JSON, format 1; the schema (JSON Schema 2020-12) stands in {@value #SCHEMA} beside this class. Numbers are in
 * SI units. An amount without a limit has the value null, and so has the verdict on what no check had an answer about.
 */
public final class JsonReport {

    /** Version of the format; grows when a reader of the old one would go wrong. */
    public static final int FORMAT = 1;

    /** Name of the schema among the resources of this class. */
    public static final String SCHEMA = "answers.schema.json";

    private static final Gson GSON = new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().serializeNulls().create();

    /**
     * Writes the answers of a run.
     *
     * @param reader over the snapshot that the answers are for
     */
    public String write(ShopAnswers answers, LocalDate day, Reader reader) {
        JsonObject root = new JsonObject();
        root.addProperty("format", FORMAT);
        root.addProperty("shop", answers.shop());
        root.addProperty("day", day.toString());
        root.addProperty("verdict", word(answers.worst()));
        JsonArray cars = new JsonArray();
        CarOverview.of(answers, reader).forEach(car -> cars.add(car(car)));
        root.add("cars", cars);
        JsonArray subjects = new JsonArray();
        answers.subjects().forEach(subject -> subjects.add(subject(subject, answers, reader)));
        root.add("subjects", subjects);
        return GSON.toJson(root) + "\n";
    }

    private static JsonObject car(CarOverview car) {
        JsonObject object = new JsonObject();
        object.addProperty("id", car.line().carId());
        object.addProperty("name", car.line().name());
        object.addProperty("verdict", car.verdict().map(JsonReport::word).orElse(null));
        JsonArray stands = new JsonArray();
        for (CarStand stand : car.line().stands()) {
            JsonObject one = new JsonObject();
            one.addProperty("visit", stand.visitId());
            one.addProperty("where", stand.where());
            one.addProperty("on", stand.on());
            stands.add(one);
        }
        object.add("stands", stands);
        object.addProperty("waiting", car.line().waiting());
        return object;
    }

    private static JsonObject subject(Subject subject, ShopAnswers answers, Reader reader) {
        JsonObject object = new JsonObject();
        object.addProperty("scope", subject.scope().name().toLowerCase(Locale.ROOT));
        object.addProperty("id", subject.ownerId());
        object.addProperty("visit", subject.visitId().orElse(null));
        object.addProperty("label", subject.label());
        object.addProperty("verdict", answers.about(subject).isEmpty() ? null : word(answers.worst(subject)));
        Optional<VisitNumbers> numbers = VisitNumbers.of(reader, subject);
        object.add("weight", numbers.flatMap(n -> n.weight().estimate()).map(JsonReport::weight).orElse(null));
        object.add("loads", numbers.map(VisitNumbers::loads).filter(Loads::found).map(JsonReport::loads).orElse(null));
        JsonArray findings = new JsonArray();
        answers.about(subject).forEach(finding -> findings.add(finding(finding)));
        object.add("findings", findings);
        return object;
    }

    private static JsonObject weight(EstimatedBalance estimate) {
        JsonObject object = new JsonObject();
        Vec3 at = estimate.balance().point();
        object.addProperty("mass", estimate.balance().mass());
        object.addProperty("massGiveOrTake", estimate.expanded(Quantity.MASS));
        object.add("balancePoint", numbers(at.x(), at.y(), at.z()));
        object.add("balancePointGiveOrTake",
                numbers(estimate.expanded(Quantity.X), estimate.expanded(Quantity.Y), estimate.expanded(Quantity.Z)));
        return object;
    }

    private static JsonArray numbers(double... values) {
        JsonArray array = new JsonArray();
        for (double value : values) {
            array.add(value);
        }
        return array;
    }

    private static JsonObject loads(Loads loads) {
        JsonObject object = new JsonObject();
        object.add("supports", carried(loads.supports()));
        object.add("castors", carried(loads.castors()));
        object.add("props", carried(loads.props()));
        return object;
    }

    private static JsonArray carried(List<Carried> all) {
        JsonArray array = new JsonArray();
        for (Carried one : all) {
            JsonObject object = new JsonObject();
            object.addProperty("id", one.id());
            object.addProperty("name", one.name());
            object.addProperty("carries", one.force());
            object.addProperty("least", one.low());
            object.addProperty("most", one.high());
            object.add("staticsLeast", finite(one.least()));
            object.add("staticsMost", finite(one.most()));
            object.addProperty("sideways", one.shear());
            array.add(object);
        }
        return array;
    }

    private static JsonElement finite(double value) {
        return Double.isFinite(value) ? new JsonPrimitive(value) : JsonNull.INSTANCE;
    }

    private static JsonObject finding(Finding finding) {
        JsonObject object = new JsonObject();
        object.addProperty("check", finding.check());
        object.addProperty("object", finding.objectId());
        object.addProperty("name", finding.objectName());
        object.addProperty("verdict", word(finding.verdict()));
        object.addProperty("words", finding.words());
        object.addProperty("situation", finding.situation());
        object.add("demand", finding.demand().map(JsonReport::amount).orElse(null));
        object.add("capacity", finding.capacity().map(JsonReport::amount).orElse(null));
        object.addProperty("atLeast", finding.atLeast());
        object.addProperty("ratedBy", finding.ratedBy());
        object.addProperty("clause", finding.clause());
        object.addProperty("caution", finding.caution());
        JsonArray missing = new JsonArray();
        finding.missing().forEach(missing::add);
        object.add("missing", missing);
        JsonArray remedies = new JsonArray();
        finding.remedies().forEach(remedy -> remedies.add(remedy(remedy)));
        object.add("remedies", remedies);
        JsonArray inputs = new JsonArray();
        finding.inputs().forEach(input -> inputs.add(input(input)));
        object.add("inputs", inputs);
        JsonArray formulas = new JsonArray();
        finding.formulas().forEach(formula -> formulas.add(formula.id()));
        object.add("formulas", formulas);
        return object;
    }

    private static JsonObject remedy(Remedy remedy) {
        JsonObject object = new JsonObject();
        object.addProperty("words", remedy.words());
        object.addProperty("proof", remedy.proof().name().toLowerCase(Locale.ROOT));
        object.addProperty("after", remedy.after().map(JsonReport::word).orElse(null));
        JsonArray harms = new JsonArray();
        remedy.harms().forEach(harm -> harms.add(harm(harm)));
        object.add("harms", harms);
        return object;
    }

    private static JsonObject harm(Harm harm) {
        JsonObject object = new JsonObject();
        object.addProperty("subject", harm.subject().label());
        object.addProperty("check", harm.check());
        object.addProperty("name", harm.objectName());
        object.addProperty("verdict", word(harm.verdict()));
        object.addProperty("words", harm.words());
        return object;
    }

    private static JsonObject input(Input input) {
        JsonObject object = new JsonObject();
        object.addProperty("name", input.name());
        object.add("amount", amount(input.amount()));
        object.addProperty("origin", input.origin());
        object.addProperty("shown", input.shown());
        return object;
    }

    private static JsonObject amount(Amount amount) {
        JsonObject object = new JsonObject();
        object.addProperty("value", Double.isFinite(amount.si()) ? amount.si() : null);
        object.addProperty("dimension", amount.dimension().name().toLowerCase(Locale.ROOT));
        return object;
    }

    private static String word(Verdict verdict) {
        return verdict.word();
    }
}

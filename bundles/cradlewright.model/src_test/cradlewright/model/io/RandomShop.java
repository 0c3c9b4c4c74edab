package cradlewright.model.io;

import cradlewright.model.base.FileRoot;
import cradlewright.model.base.Identified;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Direction;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.Source;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Fills a shop at random by reflection: every class, every attribute and every reference gets its turn. */
final class RandomShop {

    private static final List<String> TEXTS = List.of("", " ", "rear \"left\" sill", "<tag> & 'more'", "tab\tline\nreturn\rend",
            "Würzgreifer Ø 12 µm", "日本語", "\uD83D\uDE97 car", "a=b/>", "]]>", "--", "&amp;", "  two blanks  ");
    private static final int MOST_OBJECTS = 250;

    private final Random random;
    private final IdSource ids;
    private final List<EObject> objects = new ArrayList<>();

    RandomShop(Random random) {
        this.random = random;
        this.ids = new IdSource(random);
    }

    ShopFolder build(Path directory) {
        ShopFolder shop = new ShopFolder(directory);
        for (FileKind kind : FileKind.values()) {
            for (int i = 0; i < (kind.single() ? 1 : 2); i++) {
                shop.add(kind, "n " + i, (FileRoot) create(kind.rootClass()));
            }
        }
        objects.forEach(this::fillReferences);
        return shop;
    }

    private EObject create(EClass type) {
        EObject object = EcoreUtil.create(type);
        objects.add(object);
        for (EAttribute attribute : type.getEAllAttributes()) {
            if (!attribute.getName().equals("schema") && random.nextInt(3) > 0) {
                object.eSet(attribute, attribute.isMany() ? values(attribute) : value(attribute));
            }
        }
        if (object instanceof Identified identified) {
            ids.give(identified);
        }
        for (EReference containment : type.getEAllContainments()) {
            fill(object, containment);
        }
        return object;
    }

    private void fill(EObject object, EReference containment) {
        int count = objects.size() > MOST_OBJECTS ? 0 : random.nextInt(containment.isMany() ? 4 : 2);
        List<EObject> inside = IntStream.range(0, count).mapToObj(i -> create(concrete(containment.getEReferenceType())))
                .toList();
        if (containment.isMany()) {
            object.eSet(containment, inside);
        } else if (count > 0) {
            object.eSet(containment, inside.get(0));
        }
    }

    private EClass concrete(EClass type) {
        List<EClass> choices = Stream.concat(Stream.of(type), type.getEPackage().getEClassifiers().stream()
                .filter(EClass.class::isInstance).map(EClass.class::cast).filter(c -> c != type && type.isSuperTypeOf(c)))
                .filter(c -> !c.isAbstract() && !c.isInterface()).toList();
        return choices.get(random.nextInt(choices.size()));
    }

    private void fillReferences(EObject object) {
        for (EReference reference : object.eClass().getEAllReferences()) {
            if (reference.isContainment() || random.nextInt(3) == 0) {
                continue;
            }
            int end = Rules.refusesCycles(reference) ? objects.indexOf(object) : objects.size();
            List<EObject> choices = objects.subList(0, end).stream()
                    .filter(each -> reference.getEReferenceType().isInstance(each)).toList();
            if (choices.isEmpty()) {
                continue;
            }
            if (reference.isMany()) {
                Set<EObject> chosen = new LinkedHashSet<>();
                IntStream.range(0, random.nextInt(9)).forEach(i -> chosen.add(choices.get(random.nextInt(choices.size()))));
                object.eSet(reference, List.copyOf(chosen));
            } else {
                object.eSet(reference, choices.get(random.nextInt(choices.size())));
            }
        }
    }

    private List<Object> values(EAttribute attribute) {
        return IntStream.range(0, random.nextInt(4)).mapToObj(i -> value(attribute)).toList();
    }

    private Object value(EAttribute attribute) {
        EClassifier type = attribute.getEAttributeType();
        Class<?> java = type.getInstanceClass();
        if (java == Measured.class) {
            return measured(Dimension.valueOf(EcoreUtil.getAnnotation(type, "urn:cradlewright:rules", "dimension")));
        } else if (java == Position.class) {
            return new Position(number(), number(), number(), uncertainty(), source());
        } else if (java == Direction.class) {
            return new Direction(number(), number(), random.nextDouble() + 1);
        } else if (java == LocalDate.class) {
            return LocalDate.ofEpochDay(random.nextInt(40_000));
        } else if (java == LocalDateTime.class) {
            return LocalDateTime.ofEpochSecond(random.nextInt(), random.nextInt(2) * random.nextInt(1_000_000_000),
                    ZoneOffset.UTC);
        } else if (java == String.class) {
            return TEXTS.get(random.nextInt(TEXTS.size()));
        } else if (java.isEnum()) {
            return java.getEnumConstants()[random.nextInt(java.getEnumConstants().length)];
        } else if (java == boolean.class || java == Boolean.class) {
            return random.nextBoolean();
        } else if (java == Integer.class) {
            return random.nextInt();
        }
        throw new IllegalStateException("no values for " + type);
    }

    private Measured measured(Dimension dimension) {
        return new Measured(number(), dimension.stored(), uncertainty(), source());
    }

    private double number() {
        return switch (random.nextInt(6)) {
            case 0 -> random.nextInt(2_000) - 1_000;
            case 1 -> random.nextGaussian() * 1e3;
            case 2 -> Double.MIN_VALUE * random.nextInt(5);
            case 3 -> 1e300 * random.nextDouble();
            case 4 -> -0.0;
            default -> random.nextInt(100_000) / 100.0;
        };
    }

    private OptionalDouble uncertainty() {
        return random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(Math.abs(number()));
    }

    private Source source() {
        return Source.values()[random.nextInt(Source.values().length)];
    }
}

package cradlewright.model.io;

import java.util.OptionalDouble;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Reads the rules that stand beside the nouns in the metamodel. */
final class Rules {

    private static final String SOURCE = "urn:cradlewright:rules";

    private Rules() {
    }

    static boolean refusesCycles(EReference reference) {
        return "refused".equals(EcoreUtil.getAnnotation(reference, SOURCE, "cycles"));
    }

    static boolean wantsPositive(EAttribute attribute) {
        return "positive".equals(EcoreUtil.getAnnotation(attribute, SOURCE, "sign"));
    }

    static boolean refusesNegative(EAttribute attribute) {
        return "not negative".equals(EcoreUtil.getAnnotation(attribute, SOURCE, "sign"));
    }

    /** Returns the size beyond which a value of the type is a slip of the pen, in the unit that files hold. */
    static OptionalDouble most(EDataType type) {
        String most = EcoreUtil.getAnnotation(type, SOURCE, "most");
        return most == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(most));
    }
}

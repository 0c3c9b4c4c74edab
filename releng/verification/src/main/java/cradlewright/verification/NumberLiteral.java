package cradlewright.verification;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

import javax.lang.model.type.TypeKind;
import javax.lang.model.type.TypeMirror;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;

/**
 * A number written in a source file that may be changed by one part in a hundred.
 *
 * <p>Left out are: zero; 1 and 2 without a decimal point (mostly indices and exponents), unless reckoned or compared with a
 * decimal number; whole numbers that are reckoned or compared with whole numbers (indices and counts); arguments of
 * annotations. Texts of formulas are no numbers.
 * A whole number is changed into a decimal one; where that does not compile it was a count, and the change is dropped.
 *
 * @param file source file
 * @param line line, from 1
 * @param start first character in the file, from 0
 * @param end character after the last
 * @param text the number as written
 */
record NumberLiteral(Path file, int line, int start, int end, String text) {

    private static final Pattern ONE_OR_TWO = Pattern.compile("[12][lL]?");
    private static final Set<TypeKind> DECIMAL = Set.of(TypeKind.FLOAT, TypeKind.DOUBLE);
    private static final Set<TypeKind> WHOLE = Set.of(TypeKind.BYTE, TypeKind.SHORT, TypeKind.CHAR, TypeKind.INT, TypeKind.LONG);

    /** Returns the number one hundredth larger, with enough digits. */
    String changed() {
        double value = Double.parseDouble(text.replace("_", "").replaceAll("[lLdDfF]$", ""));
        return String.format(Locale.ROOT, "%.12e", 1.01 * value);
    }

    /** Returns {@code source} with this number changed. */
    String changeIn(String source) {
        return source.substring(0, start) + changed() + source.substring(end);
    }

    /** Finds the numbers of several files that belong together; {@code classPath} holds what they refer to. */
    static List<NumberLiteral> in(List<Path> files, String classPath) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<NumberLiteral> found = new ArrayList<>();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, Locale.ROOT, null)) {
            List<String> options = List.of("-proc:none", "-classpath", classPath);
            JavacTask task = (JavacTask) compiler.getTask(null, manager, null, options, null,
                    manager.getJavaFileObjectsFromPaths(files));
            Iterable<? extends CompilationUnitTree> units = task.parse();
            task.analyze();
            Trees trees = Trees.instance(task);
            for (CompilationUnitTree unit : units) {
                new Scanner(trees, unit, found).scan(unit, null);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return found;
    }

    private static final class Scanner extends TreePathScanner<Void, Void> {

        private final Trees trees;
        private final CompilationUnitTree unit;
        private final String source;
        private final List<NumberLiteral> found;

        Scanner(Trees trees, CompilationUnitTree unit, List<NumberLiteral> found) throws IOException {
            this.trees = trees;
            this.unit = unit;
            this.source = unit.getSourceFile().getCharContent(true).toString();
            this.found = found;
        }

        @Override
        public Void visitAnnotation(AnnotationTree annotation, Void nothing) {
            return null;
        }

        @Override
        public Void visitLiteral(LiteralTree literal, Void nothing) {
            if (literal.getValue() instanceof Number number && number.doubleValue() != 0) {
                int start = (int) trees.getSourcePositions().getStartPosition(unit, literal);
                int end = (int) trees.getSourcePositions().getEndPosition(unit, literal);
                String text = source.substring(start, end);
                boolean leftOut = ONE_OR_TWO.matcher(text).matches() ? !partnerIs(DECIMAL, literal)
                        : isWhole(number) && partnerIs(WHOLE, literal);
                if (!leftOut) {
                    int line = (int) unit.getLineMap().getLineNumber(start);
                    found.add(new NumberLiteral(Path.of(unit.getSourceFile().toUri()), line, start, end, text));
                }
            }
            return null;
        }

        private static boolean isWhole(Number number) {
            return number instanceof Integer || number instanceof Long;
        }

        private boolean partnerIs(Set<TypeKind> kinds, LiteralTree literal) {
            TreePath parent = getCurrentPath().getParentPath();
            if (!(parent.getLeaf() instanceof BinaryTree pair)) {
                return false;
            }
            ExpressionTree partner = pair.getLeftOperand() == literal ? pair.getRightOperand() : pair.getLeftOperand();
            TypeMirror type = trees.getTypeMirror(new TreePath(parent, partner));
            return type != null && kinds.contains(type.getKind());
        }
    }
}

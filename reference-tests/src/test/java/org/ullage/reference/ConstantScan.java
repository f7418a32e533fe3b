package org.ullage.reference;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.ArrayAccessTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.ImportTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.TypeCastTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.net.URI;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/**
 * Finds the numbers in Java source that are neither arithmetic nor stand beside a source.
 *
 * <p>It works on the syntax tree alone: types are resolved by name, which is enough because a {@code Source} is declared as
 * such wherever it is named. A number passes if
 *
 * <ul>
 *   <li>it is arithmetic where it stands, see {@link Scanner#isArithmetic};
 *   <li>it is inside an argument of a call or a constructor that has a {@code Source} as another argument: the number or the
 *       formula in which it stands is handed over together with its origin;
 *   <li>it is the value of an {@code int} constant named {@code ...DIGITS} or {@code ...DECIMALS}, which only printing has a
 *       use for, or of a {@code private static final} field that the caller lists because it is not about physics.
 * </ul>
 */
final class ConstantScan {

    private static final Pattern ABOUT_PRINTING = Pattern.compile("([A-Z_]+_)?(DIGITS|DECIMALS)");

    /** Calls that turn text into a number. */
    private static final Set<String> NUMBER_READERS =
            Set.of("parse", "valueOf", "parseDouble", "parseInt", "parseLong");

    private static final Tree.Kind[] SCALING = {
        Tree.Kind.MULTIPLY, Tree.Kind.DIVIDE, Tree.Kind.MULTIPLY_ASSIGNMENT, Tree.Kind.DIVIDE_ASSIGNMENT
    };

    private static final Pattern STARTS_AS_NUMBER = Pattern.compile("\\s*[+-]?\\.?[0-9].*", Pattern.DOTALL);

    private final Map<CompilationUnitTree, Declared> units = new HashMap<>();
    private final Set<String> sourceFields = new HashSet<>();
    private final Set<String> sourceMethods = new HashSet<>();
    private final Set<String> quantityTypes = new HashSet<>();
    private final Set<String> notAboutPhysics;
    private final Set<String> usedExceptions = new TreeSet<>();
    private final SourcePositions positions;

    /** A number without a source. */
    record Bare(String file, long line, String literal) {

        @Override
        public String toString() {
            return file + ":" + line + " " + literal;
        }
    }

    /** What one file declares and imports: names of type Source, and quantity factories by static import. */
    private record Declared(Set<String> sources, Set<String> factories) {}

    /**
     * Parses the files.
     *
     * @param files text by file name
     * @param notAboutPhysics the {@code Class.FIELD} of numbers about text, memory or numerical method
     */
    ConstantScan(Map<String, String> files, Set<String> notAboutPhysics) {
        this.notAboutPhysics = notAboutPhysics;
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<JavaFileObject> objects = new ArrayList<>();
        files.forEach((name, text) -> objects.add(new InMemory(name, text)));
        JavacTask task = (JavacTask) compiler.getTask(null, null, null, List.of("-proc:none"), null, objects);
        positions = Trees.instance(task).getSourcePositions();
        try {
            task.parse().forEach(unit -> units.put(unit, new Declared(new HashSet<>(), new HashSet<>())));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        units.keySet().forEach(unit -> unit.accept(new QuantityTypes(), null));
        units.forEach((unit, declared) -> unit.accept(new Declarations(declared), null));
    }

    /** The numbers that do not pass, by file and line. */
    List<Bare> bareNumbers() {
        List<Bare> bare = new ArrayList<>();
        units.forEach((unit, declared) -> new Scanner(unit, declared, bare).scan(unit, null));
        bare.sort((one, other) -> one.file().equals(other.file())
                ? Long.compare(one.line(), other.line())
                : one.file().compareTo(other.file()));
        return bare;
    }

    /** Of the listed exceptions, those that {@link #bareNumbers} met. */
    Set<String> usedExceptions() {
        return usedExceptions;
    }

    /** Collects the classes that are quantities: their factories make a physical value of any number but zero. */
    private final class QuantityTypes extends TreeScanner<Void, Void> {

        @Override
        public Void visitClass(ClassTree type, Void unused) {
            if (type.getExtendsClause() != null
                    && type.getExtendsClause().toString().matches("(Additive)?Quantity<.*")) {
                quantityTypes.add(type.getSimpleName().toString());
            }
            return super.visitClass(type, null);
        }
    }

    /** Collects everything of type Source by name. */
    private final class Declarations extends TreeScanner<Void, Void> {

        private final Declared declared;
        private String type = "";

        Declarations(Declared declared) {
            this.declared = declared;
        }

        @Override
        public Void visitImport(ImportTree tree, Void unused) {
            if (tree.isStatic() && tree.getQualifiedIdentifier() instanceof MemberSelectTree member) {
                String owner = lastName(member.getExpression());
                if (quantityTypes.contains(owner)) {
                    declared.factories().add(member.getIdentifier().toString());
                }
            }
            return null;
        }

        @Override
        public Void visitClass(ClassTree tree, Void unused) {
            String outer = type;
            type = tree.getSimpleName().toString();
            super.visitClass(tree, null);
            type = outer;
            return null;
        }

        @Override
        public Void visitVariable(VariableTree tree, Void unused) {
            if (tree.getType() != null && lastName(tree.getType()).equals("Source")) {
                declared.sources().add(tree.getName().toString());
                sourceFields.add(type + "." + tree.getName());
            }
            return super.visitVariable(tree, null);
        }

        @Override
        public Void visitMethod(MethodTree tree, Void unused) {
            if (tree.getReturnType() != null && lastName(tree.getReturnType()).equals("Source")) {
                sourceMethods.add(tree.getName().toString());
            }
            return super.visitMethod(tree, null);
        }
    }

    /** Visits every literal. */
    private final class Scanner extends TreePathScanner<Void, Void> {

        private final CompilationUnitTree unit;
        private final Declared declared;
        private final List<Bare> bare;

        Scanner(CompilationUnitTree unit, Declared declared, List<Bare> bare) {
            this.unit = unit;
            this.declared = declared;
            this.bare = bare;
        }

        @Override
        public Void visitAnnotation(AnnotationTree tree, Void unused) {
            return null;
        }

        @Override
        public Void visitLiteral(LiteralTree tree, Void unused) {
            if (isNumber(tree) && !isArithmetic(tree) && !hasSourceBeside() && !isException()) {
                LineMap lines = unit.getLineMap();
                long line = lines.getLineNumber(positions.getStartPosition(unit, tree));
                bare.add(new Bare(unit.getSourceFile().getName(), line, tree.toString()));
            }
            return null;
        }

        private boolean isNumber(LiteralTree tree) {
            return tree.getValue() instanceof Number
                    || (tree.getValue() instanceof String text
                            && STARTS_AS_NUMBER.matcher(text).matches()
                            && isArgumentOfNumberReader());
        }

        private boolean isArgumentOfNumberReader() {
            Tree parent = getCurrentPath().getParentPath().getLeaf();
            return (parent instanceof MethodInvocationTree call
                            && NUMBER_READERS.contains(lastName(call.getMethodSelect())))
                    || (parent instanceof NewClassTree made
                            && lastName(made.getIdentifier()).startsWith("Big"));
        }

        /**
         * Whether the number, sign aside, belongs to arithmetic, not to physics:
         *
         * <ul>
         *   <li>0, 1 and 2: nothing, one, both, mean, square;
         *   <li>as a factor: 0.5, half; 3, three dimensions, as in the growth of a body by three times its linear expansion; 4,
         *       as in the discriminant of a quadratic equation;
         *   <li>as factor or divisor: powers of ten, for percent, milli, kilo and so on;
         *   <li>the place in an array, and the digits to print in {@code text(unit, digits)}.
         * </ul>
         *
         * <p>As the argument of a quantity's factory only zero and 100 percent are arithmetic, and as the value of a field no
         * number is.
         */
        private boolean isArithmetic(LiteralTree tree) {
            if (!(tree.getValue() instanceof Number number)) {
                return false;
            }
            BigDecimal value = new BigDecimal(number.toString()).abs();
            TreePath place = placeOfNumber();
            Tree parent = place.getLeaf();
            if (parent instanceof MethodInvocationTree call && isFactory(call.getMethodSelect())) {
                return isOneOf(value, "0")
                        || (lastName(call.getMethodSelect()).equals("percent") && isOneOf(value, "100"));
            }
            if (isField(place)) {
                return false;
            }
            return isOneOf(value, "0", "1", "2")
                    || (isOneOf(parent, Tree.Kind.MULTIPLY) && isOneOf(value, "0.5", "3", "4"))
                    || (isOneOf(parent, SCALING) && isPowerOfTen(value))
                    || parent instanceof ArrayAccessTree
                    || (parent instanceof MethodInvocationTree call && isDigitsToPrint(call, tree));
        }

        /** What the number stands in, without the brackets, casts, signs and choices around it. */
        private TreePath placeOfNumber() {
            TreePath place = getCurrentPath().getParentPath();
            while (isTransparent(place.getLeaf())) {
                place = place.getParentPath();
            }
            return place;
        }

        private boolean isDigitsToPrint(MethodInvocationTree call, LiteralTree number) {
            return lastName(call.getMethodSelect()).equals("text")
                    && call.getArguments().indexOf(number) == 1;
        }

        private boolean isTransparent(Tree tree) {
            return tree instanceof ParenthesizedTree
                    || tree instanceof TypeCastTree
                    || tree instanceof ConditionalExpressionTree
                    || isOneOf(tree, Tree.Kind.UNARY_MINUS);
        }

        private boolean isFactory(ExpressionTree method) {
            return (method instanceof IdentifierTree name
                            && declared.factories().contains(name.getName().toString()))
                    || (method instanceof MemberSelectTree member
                            && quantityTypes.contains(lastName(member.getExpression())));
        }

        private boolean isField(TreePath path) {
            return path.getLeaf() instanceof VariableTree
                    && path.getParentPath().getLeaf() instanceof ClassTree;
        }

        /** Walks out from the literal to the member it is in. */
        private boolean hasSourceBeside() {
            Tree inner = getCurrentPath().getLeaf();
            for (TreePath path = getCurrentPath().getParentPath(); path != null; path = path.getParentPath()) {
                Tree outer = path.getLeaf();
                if (outer instanceof MethodTree || outer instanceof ClassTree) {
                    return false;
                }
                if (argumentsHaveSource(outer, inner)) {
                    return true;
                }
                inner = outer;
            }
            return false;
        }

        private boolean argumentsHaveSource(Tree call, Tree inner) {
            List<? extends ExpressionTree> arguments = call instanceof MethodInvocationTree method
                    ? method.getArguments()
                    : call instanceof NewClassTree made ? made.getArguments() : List.of();
            return arguments.contains(inner)
                    && arguments.stream().anyMatch(argument -> argument != inner && isSource(argument));
        }

        private boolean isSource(ExpressionTree tree) {
            if (tree instanceof IdentifierTree name) {
                return declared.sources().contains(name.getName().toString());
            }
            if (tree instanceof MemberSelectTree member) {
                return sourceFields.contains(lastName(member.getExpression()) + "." + member.getIdentifier());
            }
            return tree instanceof MethodInvocationTree call
                    && sourceMethods.contains(lastName(call.getMethodSelect()));
        }

        private boolean isException() {
            TreePath path = placeOfNumber();
            if (!isField(path)) {
                return false;
            }
            VariableTree field = (VariableTree) path.getLeaf();
            String name = ((ClassTree) path.getParentPath().getLeaf()).getSimpleName() + "." + field.getName();
            Set<Modifier> modifiers = field.getModifiers().getFlags();
            if (!modifiers.containsAll(Set.of(Modifier.STATIC, Modifier.FINAL))) {
                return false;
            }
            if (field.getType().toString().equals("int")
                    && ABOUT_PRINTING.matcher(field.getName()).matches()) {
                return true;
            }
            if (!modifiers.contains(Modifier.PRIVATE)) {
                return false;
            }
            if (notAboutPhysics.contains(name)) {
                usedExceptions.add(name);
                return true;
            }
            return field.getName().contentEquals("serialVersionUID");
        }
    }

    private static boolean isPowerOfTen(BigDecimal value) {
        return value.stripTrailingZeros().unscaledValue().equals(BigInteger.ONE);
    }

    private static boolean isOneOf(BigDecimal value, String... numbers) {
        for (String number : numbers) {
            if (value.compareTo(new BigDecimal(number)) == 0) {
                return true;
            }
        }
        return false;
    }

    private static boolean isOneOf(Tree tree, Tree.Kind... kinds) {
        return List.of(kinds).contains(tree.getKind());
    }

    private static String lastName(Tree tree) {
        return tree instanceof MemberSelectTree member ? member.getIdentifier().toString() : tree.toString();
    }

    /** A source file held as text. */
    private static final class InMemory extends SimpleJavaFileObject {

        private final String name;
        private final String text;

        InMemory(String name, String text) {
            super(URI.create("string:///" + name), Kind.SOURCE);
            this.name = name;
            this.text = text;
        }

        @Override
        public String getName() {
            return name;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return text;
        }
    }
}

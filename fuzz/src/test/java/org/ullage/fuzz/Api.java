package org.ullage.fuzz;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.ullage.fluids.Fluids;
import org.ullage.quantity.Volume;
import org.ullage.record.ServiceBook;

/** The public methods and constructors of the library, found in its class files, and how to call one. */
final class Api {

    /** Parts for authors of methods and steps, whose own checks speak to a programmer. */
    private static final Set<String> FOR_AUTHORS =
            Set.of("org.ullage.provenance", "org.ullage.workings", "org.ullage.report");

    private static final Set<String> AUTHORS_CLASSES = Set.of("Digits", "Method", "MethodBuilder", "ThermalStates");

    private static final Set<String> BARE_NUMBERS =
            Set.of("ChargeRule", "ColdPressureRule", "FinalPressureRule", "GasCushion", "GasLaw", "PipeCredit", "Unit");

    private static final Set<String> TO_DIGITS = Set.of("each", "text");

    private static final Set<String> OF_EVERY_OBJECT = Set.of("equals", "hashCode", "toString", "compareTo", "valueOf");

    private final List<Executable> entries = new ArrayList<>();
    private final Map<Class<?>, List<Executable>> makers = new HashMap<>();
    private final Arguments arguments = new Arguments(this);

    Api() {
        for (Class<?> type : publicClasses()) {
            Stream.concat(Arrays.stream(type.getDeclaredConstructors()), Arrays.stream(type.getDeclaredMethods()))
                    .filter(Api::isEntry)
                    // The order of reflection is not fixed, but a case must stay the same case.
                    .sorted(Comparator.comparing(Executable::toGenericString))
                    .forEach(this::add);
        }
    }

    List<Executable> entries() {
        return entries;
    }

    /** What makes an object of a class: its constructors and whatever returns one. */
    List<Executable> makersOf(Class<?> type) {
        return makers.getOrDefault(type, List.of());
    }

    /** Calls a method or constructor with drawn arguments, on a drawn object. */
    Object call(Executable entry, Draw draw, int depth) throws Exception {
        boolean needsObject = entry instanceof Method && !Modifier.isStatic(entry.getModifiers());
        Object receiver = needsObject ? arguments.instance(entry.getDeclaringClass(), draw, depth + 1) : null;
        Object[] given = arguments.of(entry, draw, depth);
        try {
            return entry instanceof Constructor<?> constructor
                    ? constructor.newInstance(given)
                    : ((Method) entry).invoke(receiver, given);
        } catch (InvocationTargetException thrown) {
            if (thrown.getCause() instanceof Exception exception) {
                throw exception;
            }
            throw (Error) thrown.getCause();
        } catch (IllegalArgumentException unfit) {
            throw new IllegalStateException("arguments that do not fit " + entry.toGenericString(), unfit);
        }
    }

    private void add(Executable entry) {
        entries.add(entry);
        Class<?> made = entry instanceof Method method ? method.getReturnType() : entry.getDeclaringClass();
        makers.computeIfAbsent(made, type -> new ArrayList<>()).add(entry);
        for (Class<?> wider : made.getInterfaces()) {
            makers.computeIfAbsent(wider, type -> new ArrayList<>()).add(entry);
        }
    }

    private static boolean isEntry(Executable entry) {
        return Modifier.isPublic(entry.getModifiers())
                && !entry.isSynthetic()
                && !Modifier.isAbstract(entry.getModifiers())
                && !OF_EVERY_OBJECT.contains(entry.getName())
                && !isForCallersWhoCheck(entry);
    }

    /** Formulas on bare numbers, which check nothing for speed, and rounding to a number of digits, whose refusal is Java's. */
    private static boolean isForCallersWhoCheck(Executable entry) {
        List<Class<?>> types = List.of(entry.getParameterTypes());
        boolean bare = BARE_NUMBERS.contains(entry.getDeclaringClass().getSimpleName())
                && entry instanceof Method method
                && method.getReturnType() == double.class
                && types.contains(double.class);
        return bare || (TO_DIGITS.contains(entry.getName()) && types.contains(int.class));
    }

    private static List<Class<?>> publicClasses() {
        List<Class<?>> classes = new ArrayList<>();
        for (Class<?> one : List.of(Volume.class, Fluids.class, ServiceBook.class)) {
            for (String name : classNames(one)) {
                try {
                    Class<?> type = Class.forName(name, false, one.getClassLoader());
                    if (isPublic(type)
                            && !FOR_AUTHORS.contains(type.getPackageName())
                            && !AUTHORS_CLASSES.contains(type.getSimpleName())) {
                        classes.add(type);
                    }
                } catch (ClassNotFoundException e) {
                    throw new IllegalStateException("a class file without its class: " + name, e);
                }
            }
        }
        return classes;
    }

    private static boolean isPublic(Class<?> type) {
        return Modifier.isPublic(type.getModifiers())
                && (type.getEnclosingClass() == null || isPublic(type.getEnclosingClass()))
                && !type.isAnonymousClass();
    }

    /** All classes of the module of one: in a folder while building, in a jar after packaging. */
    private static List<String> classNames(Class<?> one) {
        try {
            Path place = Path.of(
                    one.getProtectionDomain().getCodeSource().getLocation().toURI());
            if (Files.isDirectory(place)) {
                return classNames(place);
            }
            try (FileSystem jar = FileSystems.newFileSystem(URI.create("jar:" + place.toUri()), Map.of())) {
                return classNames(jar.getPath("/"));
            }
        } catch (IOException | URISyntaxException e) {
            throw new IllegalStateException("the classes of " + one + " cannot be listed", e);
        }
    }

    private static List<String> classNames(Path root) throws IOException {
        try (Stream<Path> files = Files.walk(root)) {
            return files.map(file -> root.relativize(file).toString().replace('\\', '/'))
                    .filter(file -> file.endsWith(".class") && !file.endsWith("-info.class"))
                    .map(file ->
                            file.substring(0, file.length() - ".class".length()).replace('/', '.'))
                    .sorted()
                    .toList();
        }
    }
}

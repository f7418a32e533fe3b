package org.ullage.fuzz;

import java.lang.reflect.Executable;

/** Any public method of the library with any arguments that its types allow. */
final class ApiTarget implements Target {

    private final Api api = new Api();

    @Override
    public String name() {
        return "api";
    }

    @Override
    public double share() {
        return 0.008;
    }

    @Override
    public Object ask(Draw draw) throws Exception {
        Executable entry = draw.of(api.entries());
        Finite.check(api.call(entry, draw, 0), entry.getDeclaringClass().getSimpleName() + "." + entry.getName());
        return null;
    }
}

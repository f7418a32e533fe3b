package org.ullage.fuzz;

import java.io.Reader;
import java.io.StringReader;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.SplittableRandom;
import org.ullage.fluids.DensityFunction;
import org.ullage.fluids.VapourPressureFunction;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopFluid;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Density;
import org.ullage.quantity.Quantity;
import org.ullage.quantity.Units;
import org.ullage.uncertainty.ModelFunction;

/** Values that need nothing of the library's to make them, and those that the {@link Pool} has ready. */
final class Simple {

    private Simple() {}

    /** A value of a type; null if there is none here. */
    static Object of(Class<?> type, Draw draw) {
        if (type.isPrimitive() || Number.class.isAssignableFrom(type) || type == Boolean.class) {
            return number(type, draw);
        }
        if (Quantity.class.isAssignableFrom(type)) {
            return Values.kinds().contains(type) ? Values.of(type, draw) : Values.volume(draw);
        }
        if (type.isEnum()) {
            return draw.of(type.getEnumConstants());
        }
        if (type == String.class || type == Object.class) {
            return draw.chance(0.5) ? draw.of("V1", "a", "water", "propylene glycol 30 vol%") : Texts.name(draw);
        }
        return type.isArray() ? array(type, draw) : ready(type, draw);
    }

    private static Object number(Class<?> type, Draw draw) {
        if (type == boolean.class || type == Boolean.class) {
            return draw.chance(0.5);
        }
        if (type == int.class || type == Integer.class) {
            return draw.chance(0.5) ? 1 + draw.below(5) : (int) draw.number(0, 300);
        }
        if (type == long.class || type == Long.class) {
            return draw.bits();
        }
        if (type == BigDecimal.class) {
            return BigDecimal.valueOf(draw.bits() >> draw.below(60), draw.below(12));
        }
        return draw.chance(0.5) ? draw.number(0, 1) : draw.number(0, 400);
    }

    /** A number for each input of a sizing. */
    private static double[] row(Draw draw) {
        return new double[] {
            draw.number(0.05, 5),
            draw.number(275, 300),
            draw.number(310, 380),
            draw.number(0, 15),
            draw.number(5e4, 2e5),
            draw.number(2e4, 1e5),
            draw.number(2e5, 6e5),
            draw.number(2.5e5, 6e5),
        };
    }

    private static Object array(Class<?> type, Draw draw) {
        if (type == double[].class) {
            return draw.chance(0.7)
                    ? row(draw)
                    : new double[] {draw.number(0, 2), draw.number(0, 2), draw.number(0, 2)};
        }
        return type == double[][].class
                ? new double[][] {{1, draw.number(-1, 1)}, {draw.number(-1, 1), 1}}
                : java.lang.reflect.Array.newInstance(type.getComponentType(), 0);
    }

    private static Object ready(Class<?> type, Draw draw) {
        if (type == LoopFluid.class) {
            return Pool.fluid(draw);
        } else if (type == Method.class) {
            return Pool.method(draw);
        } else if (type == Loop.class) {
            return Pool.loop(draw);
        } else if (type == SizingJob.class) {
            return Pool.job(Pool.method(draw), draw);
        } else if (type == Sizing.class) {
            Method method = Pool.method(draw);
            return method.size(Pool.job(method, draw));
        } else if (type == Source.class) {
            return Source.given();
        } else if (type == Constant.class) {
            return Units.STANDARD_GRAVITY;
        } else if (type == LocalDate.class) {
            return LocalDate.ofEpochDay(Math.floorMod((long) draw.number(0, 30_000), 4_000_000L));
        } else if (type == Reader.class) {
            return new StringReader("degC,kg/m3\n0,1000\n50,990\n100,960\n");
        } else if (type == SplittableRandom.class) {
            return new SplittableRandom(draw.bits());
        }
        return function(type);
    }

    private static Object function(Class<?> type) {
        if (type == ModelFunction.class) {
            return (ModelFunction) inputs -> {
                double sum = 1;
                for (double input : inputs) {
                    sum += input;
                }
                return sum;
            };
        } else if (type == DensityFunction.class) {
            return (DensityFunction) at -> Density.kilogramsPerCubicMetre(1000 - 0.4 * (at.si() - 280));
        } else if (type == VapourPressureFunction.class) {
            return (VapourPressureFunction) at -> AbsolutePressure.ofSi(20 * at.si());
        }
        return null;
    }
}

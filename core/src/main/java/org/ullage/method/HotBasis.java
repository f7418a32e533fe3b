package org.ullage.method;

import org.jspecify.annotations.Nullable;
import org.ullage.loop.LoopTemperatures;
import org.ullage.quantity.Temperature;

/** Which temperature a method means when it asks how hot the loop gets. */
public enum HotBasis {
    /** The highest temperature in operation; for chilled water the temperature with the plant off. */
    HIGHEST_OPERATING("highest operating temperature") {
        @Override
        @Nullable
        Temperature of(LoopTemperatures temperatures) {
            return temperatures.hot();
        }
    },
    /** The mean of flow and return. */
    MEAN("average operating temperature, the mean of flow and return") {
        @Override
        @Nullable
        Temperature of(LoopTemperatures temperatures) {
            return temperatures.mean() != null ? temperatures.mean() : temperatures.hot();
        }
    },
    /** The temperature at which the safety device acts. */
    SAFETY_DEVICE("temperature at which the safety device acts: its setting plus its positive tolerance") {
        @Override
        @Nullable
        Temperature of(LoopTemperatures temperatures) {
            return temperatures.safety() != null ? temperatures.safety() : temperatures.hot();
        }
    };

    private final String words;

    HotBasis(String words) {
        this.words = words;
    }

    /** The temperature that is meant; the highest operating one where the meant one was not given. */
    abstract @Nullable Temperature of(LoopTemperatures temperatures);

    /**
     * In words.
     *
     * @return such as {@code highest operating temperature}
     */
    @Override
    public String toString() {
        return words;
    }
}

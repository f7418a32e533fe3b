package org.ullage.reference;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.SpecificVolume;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;

/**
 * What an implementation is asked, with its inputs by name. Each comes as a quantity, from which it can be had in any unit:
 *
 * <pre>{@code double gallons = question.volume(Input.CONTENTS).in(Units.US_GALLON);}</pre>
 *
 * <p>Immutable. It does not say which case it belongs to, nor what is expected. The methods throw {@link MissingInputException}
 * if the input was not given; {@link #has} asks.
 */
public final class Question {

    private static final String SEPARATOR = ";";

    private final Asked asked;
    private final Map<Input, String> inputs;

    private Question(Asked asked, Map<Input, String> inputs) {
        this.asked = asked;
        this.inputs = inputs;
    }

    /**
     * Reads a question.
     *
     * @param asked what is asked for
     * @param inputs such as {@code contents=3000 gal; cold=40 degF}
     * @return the question
     * @throws IllegalArgumentException if an input is unknown, comes twice or has no value
     */
    public static Question of(Asked asked, String inputs) {
        Map<Input, String> map = new EnumMap<>(Input.class);
        for (String pair : inputs.split(SEPARATOR, -1)) {
            int equals = pair.indexOf('=');
            String value = pair.substring(equals + 1).strip();
            if (equals < 0 || value.isEmpty()) {
                throw new IllegalArgumentException("input \"" + pair.strip() + "\" must be written name=value");
            }
            if (map.put(Input.ofWord(pair.substring(0, equals).strip()), value) != null) {
                throw new IllegalArgumentException("input \"" + pair.strip() + "\" comes twice");
            }
        }
        return new Question(asked, map);
    }

    /**
     * The same question with one input exchanged or added: for an implementation that wraps another.
     *
     * @param input which
     * @param value as in a case file
     * @return a copy
     */
    public Question with(Input input, String value) {
        Map<Input, String> map = new EnumMap<>(inputs);
        map.put(input, value);
        return new Question(asked, map);
    }

    /** The same question with one input left out. */
    Question without(Input input) {
        Map<Input, String> map = new EnumMap<>(inputs);
        map.remove(input);
        return new Question(asked, map);
    }

    /** Something else asked, with the same inputs. */
    Question asking(Asked other) {
        return new Question(other, inputs);
    }

    /**
     * What is asked for.
     *
     * @return the thing, which sets the type of the answer
     */
    public Asked asked() {
        return asked;
    }

    /**
     * Whether an input was given.
     *
     * @param input which
     * @return true if it was
     */
    public boolean has(Input input) {
        return inputs.containsKey(input);
    }

    /**
     * An input as it is written.
     *
     * @param input which
     * @return such as {@code water/if97} or {@code 3000 gal}
     */
    public String text(Input input) {
        String text = inputs.get(input);
        if (text == null) {
            throw new MissingInputException(input.word(), "the question for " + asked.words(), "ask has(...) first");
        }
        return text;
    }

    /**
     * An input that is a volume.
     *
     * @param input which
     * @return its value
     */
    public Volume volume(Input input) {
        return read(input, Volume::parse);
    }

    /**
     * An input that is a mass.
     *
     * @param input which
     * @return its value
     */
    public Mass mass(Input input) {
        return read(input, Mass::parse);
    }

    /**
     * An input that is a temperature.
     *
     * @param input which
     * @return its value
     */
    public Temperature temperature(Input input) {
        return read(input, Temperature::parse);
    }

    /**
     * An input that is a specific volume.
     *
     * @param input which
     * @return its value
     */
    public SpecificVolume specificVolume(Input input) {
        return read(input, SpecificVolume::parse);
    }

    /**
     * An input that is a length or a height.
     *
     * @param input which
     * @return its value
     */
    public Length length(Input input) {
        return read(input, Length::parse);
    }

    /**
     * An input that is a pressure difference.
     *
     * @param input which
     * @return its value
     */
    public PressureDifference pressureDifference(Input input) {
        return read(input, PressureDifference::parse);
    }

    /**
     * An input that is a pressure, counted from the air. One that is written absolute is converted with {@link #atmosphere()}.
     *
     * @param input which
     * @return its value
     */
    public GaugePressure gaugePressure(Input input) {
        return read(input, text -> GaugePressure.parse(text, atmosphere()));
    }

    /**
     * An input that is a pressure, counted from vacuum. One that is written gauge is converted with {@link #atmosphere()}.
     *
     * @param input which
     * @return its value
     */
    public AbsolutePressure absolutePressure(Input input) {
        return gaugePressure(input).absolute(atmosphere());
    }

    /**
     * The pressure of the air.
     *
     * @return as given, else the standard atmosphere
     */
    public AbsolutePressure atmosphere() {
        return has(Input.ATMOSPHERE)
                ? read(Input.ATMOSPHERE, AbsolutePressure::parse)
                : AbsolutePressure.STANDARD_ATMOSPHERE;
    }

    /**
     * An input that is a pure number.
     *
     * @param input which
     * @return its value
     */
    public double number(Input input) {
        return read(input, Double::valueOf);
    }

    /**
     * An input of any other kind.
     *
     * @param <T> the kind
     * @param input which
     * @param reader reads its text, such as {@code Stress::parse}
     * @return its value
     */
    public <T> T read(Input input, Function<String, T> reader) {
        return reader.apply(text(input));
    }

    /**
     * The question as text.
     *
     * @return such as {@code required volume: contents=3000 gal; cold=40 degF}
     */
    @Override
    public String toString() {
        return asked.words() + ": " + inputsText();
    }

    /** The inputs as they are written, in the order of {@link Input}. */
    Map<Input, String> inputs() {
        return Collections.unmodifiableMap(inputs);
    }

    String inputsText() {
        return inputs.entrySet().stream()
                .map(entry -> entry.getKey().word() + "=" + entry.getValue())
                .collect(Collectors.joining("; "));
    }
}

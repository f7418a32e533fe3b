package org.ullage.support;

import java.io.Serializable;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.workings.Term;

/**
 * The form in which an edition of ASCE 7 writes the horizontal force on a component. Both are F_p = 0.4 S_DS I_p W_p x, with different
 * x, between the same bounds; the adopted code decides the edition.
 */
public sealed interface SeismicRule extends Serializable permits Asce705To716, Asce722 {

    /**
     * What the edition multiplies 0.4 S_DS I_p W_p by.
     *
     * @return x, zero or more
     */
    double multiplier();

    /**
     * The multiplier in symbols.
     *
     * @return a formula of the {@link #terms()}
     */
    String formula();

    /**
     * The symbols of the formula with their values.
     *
     * @return the terms
     */
    List<Term> terms();

    /**
     * The editions.
     *
     * @return such as {@code ASCE 7-05 to 7-16}
     */
    String edition();

    /**
     * Where the form comes from.
     *
     * @return its source
     */
    Source source();
}

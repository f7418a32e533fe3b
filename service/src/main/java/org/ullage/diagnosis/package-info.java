/**
 * Is this vessel still good? Two readings, cold and hot, and what was seen on the visit, held against what was installed: {@link
 * org.ullage.diagnosis.InstalledSystem} and {@link org.ullage.diagnosis.Evidence} in, {@link org.ullage.diagnosis.Diagnosis} out. It
 * ranks what may be the matter, says what speaks for and against it and what to measure next, and says so when the readings cannot
 * decide.
 *
 * <p>The physics is the swing of {@link org.ullage.diagnosis.SwingModel}; what signs tell is a table of judgements, {@code
 * sign-likelihoods.tsv} beside this package, which is shown as such.
 *
 * <p>Start at {@link org.ullage.diagnosis.Diagnosis}. Around it: {@code operation} below it gives the pressure that a
 * sound vessel would show; {@code report} prints the ranking, {@code record} keeps the visit.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.diagnosis;

import org.jspecify.annotations.NullMarked;

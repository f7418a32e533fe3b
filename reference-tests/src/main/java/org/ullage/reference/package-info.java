/**
 * The published reference checks: what standards, laws, handbooks and computed tables say, as cited cases, and a runner that
 * puts the same questions to any implementation.
 *
 * <p>Implement {@link org.ullage.reference.ImplementationUnderTest}, hand it to {@link
 * org.ullage.reference.ReferenceRun#of(ImplementationUnderTest)} and print the {@link org.ullage.reference.ReferenceReport} as
 * text, Markdown or HTML. {@link org.ullage.reference.UllageImplementation} is this library's own.
 *
 * <p>A printed figure that is wrong is kept with its explanation: the case then demands that the implementation does
 * <em>not</em> repeat it. See {@link org.ullage.reference.Verdict}.
 *
 * <p>Start at {@link org.ullage.reference.ReferenceRun}. Around it: core, fluids and service below it, reached through one
 * interface, so that nothing here favours them; the cases stand in {@code .csv} files beside this package.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.reference;

import org.jspecify.annotations.NullMarked;

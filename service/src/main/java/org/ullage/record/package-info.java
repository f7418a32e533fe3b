/**
 * The record that the next person finds: {@link org.ullage.record.CommissioningNote} when a loop is put into use, a {@link
 * org.ullage.record.VisitRecord} for each visit, both bound into a {@link org.ullage.record.ServiceBook}. From the book come the {@link
 * org.ullage.record.TagNote} beside the vessel, the {@link org.ullage.record.ChargeTrend} and {@link org.ullage.record.FluidTrend} over the
 * years and the {@link org.ullage.record.PreSeasonChecklist}. {@link org.ullage.record.SizingRecord} keeps a sizing with its answer.
 *
 * <p>What is unknown stays unknown: null here, absent in a file, {@code not recorded} in print. Texts are kept as they were given, but for
 * halves of surrogate pairs, which no file can hold and which become U+FFFD, and for blank texts, which count as not recorded.
 *
 * <p>Everything here turns into JSON and back by a plain {@code new ObjectMapper()} of Jackson 2.18 or newer; the library itself needs no
 * Jackson, neither to compile against nor to run. Quantities are text with their unit. Fields that this release does not know are kept and
 * written back, sorted by name; the one name that is taken is {@code unknownFields}. The resource {@code service-book.schema.json} beside
 * this package describes the file.
 *
 * <p>Start at {@link org.ullage.record.ServiceBook}. Around it: core's {@code method} and {@code published} and this
 * module's {@code condition} below it; {@code report} prints it.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.record;

import org.jspecify.annotations.NullMarked;

package org.steadwork.workplace;

import java.util.List;
import org.steadwork.workplace.fit.BodyMeasure;

/**
 * How something to ask for is put to the person who buys it.
 *
 * @param spec     with {wanted}, {from}, {to}, {seat}, {desk}, {depth} to be filled in
 * @param judges   id of the criterion whose evidence it rests on
 * @param drivenBy the body measures whose error widens the range asked for
 */
record EquipmentText(String what, String spec, String why, String judges, List<BodyMeasure> drivenBy, String source) {
}

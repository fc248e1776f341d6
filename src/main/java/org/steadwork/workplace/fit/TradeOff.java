package org.steadwork.workplace.fit;

/**
 * One way to share what elbow and thigh cannot both have, at the seat height of the best setting; all mm.
 *
 * @param elbow home row minus elbow
 * @param clearance room over the thigh; negative means contact
 */
public record TradeOff(double seat, double desk, double elbow, double clearance) {
}

/**
 * Direct-current networks of cables: node voltages of trees and rings under loads of constant
 * current, constant power and constant resistance. Numbers only; what the numbers stand for is told
 * by {@code core.electrical}.
 */
@NullMarked
package keenward.core.electrical.network;

import org.jspecify.annotations.NullMarked;

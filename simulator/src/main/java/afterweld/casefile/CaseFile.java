package afterweld.casefile;

import afterweld.choice.RouteSettings;
import afterweld.choice.answer.Requirement;
import afterweld.joint.JointSettings;
import afterweld.study.SpreadSettings;
import afterweld.weld.WeldCase;

/**
 * A case as read: the joint to simulate and what is asked about it.
 *
 * @param weld the joint, its procedure and its heat treatment
 * @param requirement what the drawing asks
 * @param routes what the shop can do
 * @param joint gauge, bend, fillet, tube and member
 * @param spread half-widths of the inputs
 */
public record CaseFile(
    WeldCase weld,
    Requirement requirement,
    RouteSettings routes,
    JointSettings joint,
    SpreadSettings spread) {}

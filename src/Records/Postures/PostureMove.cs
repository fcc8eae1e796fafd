using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;

namespace Slantwise.Records.Postures;

/// <summary>A posture after a part of it was moved.</summary>
/// <param name="Settled">The posture on the floor. It touches, unless nothing that touches was found: then it is the last one that did.</param>
/// <param name="Shift">How far the origin of its floor lies from the origin of the floor on which the move began.</param>
/// <param name="Stops">What keeps the part from going all the way, the strongest first; empty where it went.</param>
/// <param name="IsMet">Whether the part went where it was wanted.</param>
public sealed record PostureMove(SettledPosture Settled, Point2 Shift, IReadOnlyList<JointStop> Stops, bool IsMet);

namespace Slantwise.Engines.Mechanics;

/// <summary>A segment's mass, thought of at its centre.</summary>
/// <param name="MassFraction">Share of the body's mass, 0 or more.</param>
/// <param name="Centre">Where the segment's centre of mass is.</param>
public readonly record struct PointMass(double MassFraction, Point3 Centre);

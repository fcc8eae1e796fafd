namespace Slantwise.Engines.Mechanics;

/// <summary>A joint that can go no further and so keeps a wish from being met.</summary>
/// <param name="Joint">The movement.</param>
/// <param name="Side">Left or right for a paired joint, else Middle.</param>
/// <param name="Kind">How it has ended.</param>
public readonly record struct JointStop(Joint Joint, Side Side, JointStopKind Kind);

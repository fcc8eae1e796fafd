namespace Slantwise.Engines.Mechanics.Postures;

/// <summary>Where a partner holds or stands on the other body.</summary>
/// <param name="Own">The partner's part.</param>
/// <param name="On">The other body's part that it meets.</param>
public readonly record struct Join(Contact Own, Contact On);

namespace Slantwise.Engines.Planning.Groups;

/// <summary>A fixed place: kept, whatever is wished.</summary>
/// <param name="Pupil">A place in the list of pupils.</param>
/// <param name="Group">The group, from 0.</param>
public readonly record struct GroupLock(int Pupil, int Group);

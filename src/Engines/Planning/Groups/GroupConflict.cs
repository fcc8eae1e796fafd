namespace Slantwise.Engines.Planning.Groups;

/// <summary>Wishes that cannot all be met beside sizes and fixed places; without any one of them the rest of them can.</summary>
/// <param name="Wishes">Places in the request's list, ascending. Empty where sizes and fixed places alone cannot be kept.</param>
/// <param name="IsProved">Whether it is certain that they cannot; where false the search for a division that meets them was cut off.</param>
public sealed record GroupConflict(IReadOnlyList<int> Wishes, bool IsProved);

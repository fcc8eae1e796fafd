namespace Slantwise.Records.Groups;

/// <summary>A group on the list for the wall.</summary>
/// <param name="Names">Who is in it, in the order of the class.</param>
/// <param name="Mats">Its mats, as written; empty for none.</param>
/// <param name="MatCount">How many mats those are.</param>
/// <param name="FirstStation">Where it begins; empty where there are no stations.</param>
public sealed record ListedGroup(IReadOnlyList<string> Names, string Mats, int MatCount, string FirstStation);

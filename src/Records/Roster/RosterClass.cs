using Slantwise.Records.Checks;

namespace Slantwise.Records.Roster;

/// <summary>A class as roster files give it.</summary>
/// <param name="Place">Where it was read.</param>
/// <param name="Name">Its name, 1 to 60 characters, unlike any other class of the reading.</param>
/// <param name="Key">The id the files give it; none in a plain file.</param>
/// <param name="IsClosed">Whether the files say it is to be deleted: its pupils leave it and its evidence stays.</param>
public sealed record RosterClass(FilePlace Place, string Name, string? Key = null, bool IsClosed = false);

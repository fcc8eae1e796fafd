namespace Slantwise.Host.Studies;

/// <summary>One thing and what judges gave it.</summary>
/// <param name="Name">Its name; may be empty where each row is one.</param>
/// <param name="Pupil">Whose it is; none where the table does not say.</param>
/// <param name="Given">The category by judge; judges who gave none are left out.</param>
internal sealed record JudgedUnit(string Name, string? Pupil, IReadOnlyDictionary<int, int> Given);

using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks.Designs;
using DesignWords = Slantwise.Records.Tasks.Designs.TaskWords;

namespace Slantwise.Desk.Pages.Library;

/// <summary>A task of the library, or of the school, as a page shows it: its facts, and its words in one language.</summary>
/// <param name="Key">Its name in addresses and files; the id of one of the school's own.</param>
/// <param name="Design">The whole task.</param>
/// <param name="Words">Its words in the reader's language.</param>
public sealed record LibraryEntry(string Key, TaskDesign Design, DesignWords Words)
{
    /// <summary>Whether it is one of the school's own, in the school's wording and with its levels.</summary>
    public bool IsOwn { get; init; }

    /// <summary>Where its page is.</summary>
    public string Address => "/library/" + Key;

    /// <summary>The picture that stands for it: that of the level in the middle of those that have one.</summary>
    public string? Posture => Design.Levels.Select(l => l.Posture).OfType<string>().ToList() is { Count: > 0 } shown ? shown[shown.Count / 2] : null;

    /// <summary>The places, from 0, of the levels that a policy leaves.</summary>
    /// <param name="policy">The school's policy.</param>
    public IReadOnlyList<int> LeftBy(SafetyPolicy policy) =>
        [.. Enumerable.Range(0, Design.Levels.Count).Where(i => Offer.Removed(Design.Levels[i].Named(""), policy).Count == 0)];
}

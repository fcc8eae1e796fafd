namespace Slantwise.Desk.Pages.Safety;

/// <summary>A line while it is being typed.</summary>
/// <param name="text">What it says so far.</param>
public sealed class LineDraft(string text = "")
{
    /// <summary>What it says.</summary>
    public string Text { get; set; } = text;

    /// <summary>The lines as typed, without their empty ones.</summary>
    /// <param name="lines">The lines.</param>
    public static IReadOnlyList<string> Typed(IEnumerable<LineDraft> lines) => [.. lines.Select(l => (l.Text ?? "").Trim()).Where(t => t.Length > 0)];
}

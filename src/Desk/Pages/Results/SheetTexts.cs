namespace Slantwise.Desk.Pages.Results;

/// <summary>What the page's cells should show after something was typed.</summary>
/// <param name="PupilId">The pupil whose sheet it is.</param>
/// <param name="Texts">The text of every cell by its key.</param>
/// <param name="Focus">The key of the cell to go to; none to stay.</param>
public sealed record SheetTexts(Guid PupilId, IReadOnlyDictionary<string, string> Texts, string? Focus);

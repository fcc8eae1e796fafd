using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>One thing to mind about the model's numbers.</summary>
/// <param name="Caution">Which.</param>
/// <param name="Sentence">What it is.</param>
/// <param name="Extent">How much it is; may be empty.</param>
/// <param name="Help">What could be done about it.</param>
public sealed record CautionLine(ResponseCaution Caution, string Sentence, string Extent, string Help);

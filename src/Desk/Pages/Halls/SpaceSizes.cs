using System.Globalization;
using Slantwise.Records.Halls;
using S = Slantwise.Desk.Words.SpaceWords;

namespace Slantwise.Desk.Pages.Halls;

/// <summary>Number, sizes and distances of mats as they are typed: what cannot be read stays, with a sentence, and changes nothing.</summary>
/// <param name="count">How many mats to lay out.</param>
/// <param name="layout">The layout whose sizes stand in the fields.</param>
public sealed class SpaceSizes(int count, HallLayout layout)
{
    /// <summary>How many mats to lay out.</summary>
    public string Count { get; set; } = count.ToString(CultureInfo.CurrentCulture);

    /// <summary>A mat's long side.</summary>
    public string Length { get; set; } = MetresText.Of(layout.MatLengthM);

    /// <summary>A mat's short side.</summary>
    public string Width { get; set; } = MetresText.Of(layout.MatWidthM);

    /// <summary>Between two mats.</summary>
    public string Clear { get; set; } = MetresText.Of(layout.ClearM);

    /// <summary>To walls and things.</summary>
    public string WallClear { get; set; } = MetresText.Of(layout.WallClearM);

    /// <summary>The number of mats; none while it cannot be read.</summary>
    public int? MatCount => int.TryParse(Count, NumberStyles.None, CultureInfo.InvariantCulture, out var read) && read is >= 1 and <= SpaceProposal.MostMats ? read : null;

    /// <summary>What is wrong with the number; none if nothing is.</summary>
    public string? CountProblem => MatCount is null ? S.Say("CountProblem", SpaceProposal.MostMats) : null;

    /// <summary>What is wrong with the long side; none if nothing is.</summary>
    public string? LengthProblem => MetresText.Read(Length) is not (> 0 and <= 20) ? S.Say("MatProblem") : null;

    /// <summary>What is wrong with the short side; none if nothing is.</summary>
    public string? WidthProblem => MetresText.Read(Width) is not (> 0 and <= 20 and var width) ? S.Say("MatProblem")
        : MetresText.Read(Length) is { } length && width > length ? S.Say("MatOrderProblem") : null;

    /// <summary>What is wrong with a distance; none if nothing is.</summary>
    /// <param name="text">What was typed.</param>
    public static string? ClearProblem(string text) => MetresText.Read(text) is >= 0 and <= 10 ? null : S.Say("ClearProblem");

    /// <summary>A layout with what can be read; the rest as it was.</summary>
    /// <param name="before">The layout.</param>
    public HallLayout On(HallLayout before)
    {
        // Both sides of a mat or neither: one alone might be the longer one for a moment.
        var isMat = LengthProblem is null && WidthProblem is null;
        return before with
        {
            MatLengthM = isMat ? Kept(Length, before.MatLengthM) : before.MatLengthM,
            MatWidthM = isMat ? Kept(Width, before.MatWidthM) : before.MatWidthM,
            ClearM = ClearProblem(Clear) is null ? Kept(Clear, before.ClearM) : before.ClearM,
            WallClearM = ClearProblem(WallClear) is null ? Kept(WallClear, before.WallClearM) : before.WallClearM,
        };
    }

    // A field that shows what is there changes nothing, though it shows fewer digits.
    private static double Kept(string text, double beforeM) => text == MetresText.Of(beforeM) ? beforeM : MetresText.Read(text)!.Value;
}

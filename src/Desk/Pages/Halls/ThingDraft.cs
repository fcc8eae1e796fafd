using Slantwise.Records.Halls;
using S = Slantwise.Desk.Words.SpaceWords;

namespace Slantwise.Desk.Pages.Halls;

/// <summary>A thing in a hall as it is typed: whatever stands in a field stays there.</summary>
public sealed class ThingDraft
{
    /// <summary>What it is.</summary>
    public string Name { get; set; } = "";

    /// <summary>From the left wall.</summary>
    public string Left { get; set; } = "0";

    /// <summary>From the front wall.</summary>
    public string Front { get; set; } = "0";

    /// <summary>From left to right.</summary>
    public string Width { get; set; } = "1";

    /// <summary>From front to back.</summary>
    public string Depth { get; set; } = "1";

    /// <summary>Whether nobody sees over it.</summary>
    public bool IsHigh { get; set; }

    /// <summary>Tells it from others while it moves in the list.</summary>
    public Guid Key { get; } = Guid.NewGuid();

    /// <summary>A kept thing as text.</summary>
    /// <param name="thing">The thing.</param>
    public static ThingDraft Of(HallThing thing) => new()
    {
        Name = thing.Name, Left = MetresText.Of(thing.LeftM), Front = MetresText.Of(thing.FrontM), Width = MetresText.Of(thing.WidthM), Depth = MetresText.Of(thing.DepthM), IsHigh = thing.IsHigh,
    };

    /// <summary>The thing; none while something in it cannot be read.</summary>
    /// <param name="hallWidthM">The hall; none while it cannot be read.</param>
    /// <param name="hallDepthM">The hall.</param>
    public HallThing? ToThing(double? hallWidthM, double? hallDepthM) =>
        PlaceProblem(Left, hallWidthM) is null && PlaceProblem(Front, hallDepthM) is null && SizeProblem(Width) is null && SizeProblem(Depth) is null
            ? new(Name.Trim(), MetresText.Read(Left)!.Value, MetresText.Read(Front)!.Value, MetresText.Read(Width)!.Value, MetresText.Read(Depth)!.Value, IsHigh) : null;

    /// <summary>What is wrong with a place; none if nothing is.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="hallM">How far the hall goes that way; none while that cannot be read.</param>
    public static string? PlaceProblem(string text, double? hallM) => MetresText.Read(text) is not (>= 0 and var at) ? S.Say("PlaceProblem")
        : at >= hallM ? S.Say("OutsideProblem", hallM) : null;

    /// <summary>What is wrong with a size; none if nothing is.</summary>
    /// <param name="text">What was typed.</param>
    public static string? SizeProblem(string text) => MetresText.Read(text) is > 0 and <= 200 ? null : S.Say("SizeProblem");
}

using Slantwise.Records.Halls;
using S = Slantwise.Desk.Words.SpaceWords;

namespace Slantwise.Desk.Pages.Halls;

/// <summary>A hall as it is typed.</summary>
/// <param name="schoolId">The school.</param>
/// <param name="id">The hall's id.</param>
public sealed class HallDraft(Guid schoolId, Guid id)
{
    /// <summary>Things a hall has at most.</summary>
    public const int MostThings = 40;

    private SchoolHall? _shown;

    /// <summary>The hall's id.</summary>
    public Guid Id => id;

    /// <summary>What it is called.</summary>
    public string Name { get; set; } = "";

    /// <summary>From the left wall to the right one.</summary>
    public string Width { get; set; } = "20";

    /// <summary>From the front wall to the back one.</summary>
    public string Depth { get; set; } = "12";

    /// <summary>What stands in it.</summary>
    public List<ThingDraft> Things { get; init; } = [];

    /// <summary>What is wrong with its name; none if nothing is.</summary>
    public string? NameProblem => Name.Trim().Length is >= 1 and <= 80 ? null : S.Say("NameProblem");

    /// <summary>The hall to keep; none while something in it cannot be read.</summary>
    public SchoolHall? Hall => NameProblem is null && SideProblem(Width) is null && SideProblem(Depth) is null && ReadThings is var things && things.Count == Things.Count
        ? Made(things) : null;

    /// <summary>The hall to draw: what can be read of it, and the last walls that could be.</summary>
    public SchoolHall Shown => _shown = SideProblem(Width) is null && SideProblem(Depth) is null ? Made(ReadThings)
        : _shown ?? new() { SchoolId = schoolId, Id = id, Name = Name, WidthM = 20, DepthM = 12 };

    private List<HallThing> ReadThings => [.. Things.Select(t => t.ToThing(MetresText.Read(Width), MetresText.Read(Depth))).OfType<HallThing>()];

    /// <summary>A kept hall as text.</summary>
    /// <param name="hall">The hall.</param>
    public static HallDraft Of(SchoolHall hall) => new(hall.SchoolId, hall.Id)
    {
        Name = hall.Name, Width = MetresText.Of(hall.WidthM), Depth = MetresText.Of(hall.DepthM), Things = [.. hall.Things.Select(ThingDraft.Of)],
    };

    /// <summary>What is wrong with a wall's length; none if nothing is.</summary>
    /// <param name="text">What was typed.</param>
    public static string? SideProblem(string text) => MetresText.Read(text) is >= 2 and <= 200 ? null : S.Say("SideProblem");

    private SchoolHall Made(IReadOnlyList<HallThing> things) => new()
    {
        SchoolId = schoolId, Id = id, Name = Name.Trim(), WidthM = MetresText.Read(Width)!.Value, DepthM = MetresText.Read(Depth)!.Value, Things = things,
    };
}

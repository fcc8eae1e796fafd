using Slantwise.Records.Schools;
using Slantwise.Records.Tasks;

namespace Slantwise.Desk.Pages.Tasks;

/// <summary>A level while it is being typed.</summary>
/// <param name="id">The level's id, kept through every change of its wording.</param>
public sealed class LevelDraft(Guid id)
{
    /// <summary>The level's id.</summary>
    public Guid Id => id;

    /// <summary>How it is done.</summary>
    public string Name { get; set; } = "";

    /// <summary>What its dose measures.</summary>
    public DoseKind DoseKind { get; set; } = DoseKind.HoldS;

    /// <summary>How much, in the unit the kind names; none while nothing is typed.</summary>
    public decimal? Amount { get; set; }

    /// <summary>What it asks of the body.</summary>
    public HashSet<BodyDemand> Demands { get; init; } = [];

    /// <summary>The library's posture that shows it; empty for none.</summary>
    public string Posture { get; set; } = "";

    /// <summary>A draft of a level, or of a copy of it.</summary>
    /// <param name="level">The level to start from.</param>
    /// <param name="id">The draft's id: the level's own, or a new one for a copy.</param>
    public static LevelDraft Of(Level level, Guid id) => new(id)
    {
        Name = level.Name,
        DoseKind = level.Dose.Kind,
        Amount = level.Dose.Amount,
        Demands = [.. level.Demands],
        Posture = level.Posture ?? "",
    };

    /// <summary>The level as typed; a missing amount is 0, which a check refuses.</summary>
    public Level ToLevel() => new()
    {
        Id = Id,
        Name = Name.Trim(),
        Dose = new Dose(DoseKind, Amount ?? 0),
        Demands = [.. Demands.Order()],
        Posture = Posture.Length == 0 ? null : Posture,
    };
}

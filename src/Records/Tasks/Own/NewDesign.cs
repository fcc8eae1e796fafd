using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Designs.Grids;

namespace Slantwise.Records.Tasks.Own;

/// <summary>Designs to start from where there is none yet.</summary>
public static class NewDesign
{
    private const decimal UsualSpaceM = 1;

    /// <summary>A task without a word, a level or a row on its grid but a hold.</summary>
    /// <param name="id">The task's id.</param>
    /// <param name="language">The language it will be written in, two letters.</param>
    public static TaskDesign Empty(Guid id, string language) => new()
    {
        Id = id,
        Pattern = MovementPattern.StaticBalance,
        Supports = [SupportPart.Foot],
        Mats = new MatNeed(0, MatShare.Pupil),
        Space = new ClearSpace(UsualSpaceM, ClearSpace.CommonPractice),
        Factors = [new TaskFactor { Key = Files.TaskFileWords.Of(DoseKind.HoldS), Kind = FactorKind.External, Role = FactorRole.Supporting, Range = [FactorValue.Of(3), FactorValue.Of(5), FactorValue.Of(10)] }],
        Words = new Dictionary<string, TaskWords> { [language] = new() { Language = language, Name = "", Purpose = "" } },
    };

    /// <summary>A design for a task that was typed without one: its words, its levels, and its doses as the only rows of the grid.</summary>
    /// <param name="task">The task.</param>
    /// <param name="language">The language it is written in, two letters.</param>
    public static TaskDesign Of(MovementTask task, string language)
    {
        var empty = Empty(task.Id, language);
        var doses = task.Levels.Select(l => l.Dose).Distinct().ToList();
        var grid = doses.Aggregate(empty with { Factors = doses.Count == 0 ? empty.Factors : [] }, GridEdit.WithDose);
        // A task that is held is most likely a balance; what else it is, its teacher says.
        return DesignInStep.Of(grid with { Pattern = doses.All(d => d.Kind == DoseKind.HoldS) ? MovementPattern.StaticBalance : MovementPattern.Sequence }, task).Design;
    }
}

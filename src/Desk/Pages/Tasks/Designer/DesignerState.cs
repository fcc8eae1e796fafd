using Slantwise.Records.Schools;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Designs.Grids;
using Slantwise.Records.Tasks.Designs.Ladders;
using Slantwise.Records.Tasks.Own;
using DesignWords = Slantwise.Records.Tasks.Designs.TaskWords;

namespace Slantwise.Desk.Pages.Tasks.Designer;

/// <summary>A task being designed: grid, plan, what was said about proposed levels, the levels taken; and every step back.</summary>
/// <param name="design">The design to start from, with words in <paramref name="language"/>.</param>
/// <param name="language">The language that is written in.</param>
/// <param name="newId">Makes ids for levels that are taken.</param>
public sealed partial class DesignerState(TaskDesign design, string language, Func<Guid> newId)
{
    private static readonly IReadOnlyDictionary<Guid, LevelAnswer> NoAnswers = new Dictionary<Guid, LevelAnswer>();

    private readonly Stack<(TaskDesign Design, LadderPlan? Plan, IReadOnlyDictionary<Guid, LevelAnswer> Answers)> _before = [];
    private IReadOnlyDictionary<Guid, LevelAnswer> _answers = NoAnswers;
    private IReadOnlyList<LadderRow>? _rows;

    /// <summary>The task as it stands.</summary>
    public TaskDesign Design { get; private set; } = design;

    /// <summary>What is asked of the grid; none where the grid cannot give levels yet.</summary>
    public LadderPlan? Plan { get; private set; } = LadderPlan.For(design);

    /// <summary>The language that is written in.</summary>
    public string Language => language;

    /// <summary>The words in that language.</summary>
    public DesignWords Words => Design.Words[language];

    /// <summary>Whether there is a step to go back.</summary>
    public bool CanUndo => _before.Count > 0;

    /// <summary>The levels that the grid suggests, with what the teacher said about them. Empty without a plan.</summary>
    public IReadOnlyList<LadderRow> Rows => _rows ??= Plan is { } plan ? [.. LadderProposal.Of(Design, plan).Levels.Select(RowOf)] : [];

    /// <summary>The task with the suggested levels in place of its own, to look at.</summary>
    public TaskDesign Suggested => Design with
    {
        Levels = [.. Rows.Select(r => r.Level)],
        Words = new Dictionary<string, DesignWords> { [language] = Words with { Levels = [.. Rows.Select(r => r.Name)] } },
    };

    /// <summary>The keys of the factors that were chosen to move.</summary>
    public IReadOnlyList<string> Chosen => Plan is not { } plan ? [] : plan.Kind == LadderKind.Classical ? [plan.Key.FactorKey] : [plan.Key.FactorKey, .. plan.Supporting.Select(s => s.FactorKey)];

    /// <summary>Whether the task's levels are the suggested ones, in their order.</summary>
    public bool IsTaken => Rows.Count > 0 && Rows.Select(r => r.Level.Id).SequenceEqual(Design.Levels.Select(l => l.Id));

    /// <summary>Goes a step back.</summary>
    public void Undo()
    {
        if (_before.TryPop(out var before)) (Design, Plan, _answers, _rows) = (before.Design, before.Plan, before.Answers, null);
    }

    /// <summary>Changes the grid or the task itself; the plan follows.</summary>
    /// <param name="change">From the design as it is to another. The same one back changes nothing.</param>
    public void Change(Func<TaskDesign, TaskDesign> change)
    {
        var now = change(Design);
        if (ReferenceEquals(now, Design)) return;
        Keep(now, Plan is { } plan ? plan.Fit(Design, now) : LadderPlan.For(now), _answers);
    }

    /// <summary>Changes the words in the language that is written in.</summary>
    /// <param name="change">From the words as they are to others.</param>
    public void Say(Func<DesignWords, DesignWords> change) => Change(d => d with { Words = d.Words.ToDictionary(w => w.Key, w => w.Key == language ? change(w.Value) : w.Value) });

    /// <summary>Asks something else of the grid.</summary>
    /// <param name="plan">What is asked.</param>
    public void Ask(LadderPlan plan)
    {
        // Whichever factor is asked for as the key one is the key row of the grid.
        var now = Design.Factors.Any(f => f.Key == plan.Key.FactorKey && f.Role == FactorRole.Key) ? Design : GridEdit.WithKey(Design, plan.Key.FactorKey);
        Keep(now, plan, _answers);
    }

    /// <summary>Says something about a suggested level.</summary>
    /// <param name="row">The level.</param>
    /// <param name="change">What is said, from what was said before.</param>
    public void Answer(LadderRow row, Func<LevelAnswer, LevelAnswer> change)
    {
        var id = row.Proposed.Level.Id;
        var answer = change(_answers.GetValueOrDefault(id) ?? new LevelAnswer());
        Keep(Design, Plan, _answers.Where(a => a.Key != id).Append(new(id, answer)).ToDictionary());
    }

    private void Keep(TaskDesign now, LadderPlan? plan, IReadOnlyDictionary<Guid, LevelAnswer> answers)
    {
        _before.Push((Design, Plan, _answers));
        (Design, Plan, _answers, _rows) = (now, plan, answers, null);
    }

    private LadderRow RowOf(ProposedLevel proposed)
    {
        var said = _answers.GetValueOrDefault(proposed.Level.Id) ?? new LevelAnswer();
        var name = string.IsNullOrWhiteSpace(said.Name) ? LadderNames.Of(Design, proposed.Level, Words) : said.Name;
        var level = proposed.Level with
        {
            Posture = said.Posture is null ? proposed.Level.Posture : said.Posture.Length == 0 ? null : said.Posture,
            Demands = said.Demands ?? proposed.Level.Demands,
        };
        DemandBasis? basis = said.Demands is not null ? null : proposed.Basis != DemandBasis.Unknown ? proposed.Basis : level.Posture is null ? DemandBasis.Unknown : DemandBasis.Posture;
        // What a picture shows is written out, so that the file says it too.
        return new LadderRow(proposed, level with { Demands = [.. level.Needs] }, name, basis);
    }
}

namespace Slantwise.Records.Tasks.Designs.Grids;

/// <summary>Changes of a task's factor grid, each of which leaves a design whose levels keep the places they can.</summary>
public static partial class GridEdit
{
    /// <summary>Adds a row without values, in words.</summary>
    /// <param name="design">The design.</param>
    /// <param name="name">What the row is called, not empty.</param>
    /// <returns>With the row at the end; the key row where there was none. Its name stands in every language of the design until somebody translates it.</returns>
    /// <exception cref="ArgumentException">An empty name.</exception>
    public static TaskDesign Add(TaskDesign design, string name)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        var key = FactorKeys.Of(name, [.. design.Factors.Select(f => f.Key)]);
        var row = new TaskFactor { Key = key, Kind = FactorKind.Intrinsic, Role = RoleOfNext(design) };
        return design with
        {
            Factors = [.. design.Factors, row],
            Words = OfAll(design, words => WithFactor(words, key, new FactorWords(name.Trim(), new Dictionary<string, string>()))),
        };
    }

    /// <summary>Makes a dose a value of the grid: adds its row, or the amount to the row's range, or nothing where it is there.</summary>
    /// <param name="design">The design.</param>
    /// <param name="dose">Any dose.</param>
    public static TaskDesign WithDose(TaskDesign design, Dose dose)
    {
        if (design.HasDose(dose)) return design;
        var at = FactorValue.Of(dose.Amount);
        return design.Factors.FirstOrDefault(f => f.Dose == dose.Kind) is { } row
            ? Replace(design, row with { Range = Between(row.Range, at, dose.Kind) })
            : design with
            {
                Factors = [.. design.Factors, new TaskFactor { Key = Files.TaskFileWords.Of(dose.Kind), Kind = FactorKind.External, Role = RoleOfNext(design), Range = [at] }],
            };
    }

    /// <summary>Calls a row something else, in one language.</summary>
    /// <param name="design">The design.</param>
    /// <param name="key">A row that is no dose: those have their names from the program.</param>
    /// <param name="language">The language.</param>
    /// <param name="name">What it is called; kept as it was where empty.</param>
    public static TaskDesign Rename(TaskDesign design, string key, string language, string name) => string.IsNullOrWhiteSpace(name) ? design : design with
    {
        Words = OfAll(design, words => words.Language == language ? WithFactor(words, key, new FactorWords(name.Trim(), ValuesOf(words, key))) : words),
    };

    /// <summary>Takes a row off the grid, and its values off the levels.</summary>
    /// <param name="design">The design.</param>
    /// <param name="key">The row.</param>
    /// <returns>Without it. Where it was the key row, the first one left is.</returns>
    public static TaskDesign Remove(TaskDesign design, string key)
    {
        var left = design.Factors.Where(f => f.Key != key).ToList();
        if (left.Count > 0 && left.All(f => f.Role != FactorRole.Key)) left[0] = left[0] with { Role = FactorRole.Key };
        return design with
        {
            Factors = left,
            Levels = [.. design.Levels.Select(l => l with { Settings = l.Settings.Where(s => s.Key != key).ToDictionary() })],
            Words = OfAll(design, words => words with { Factors = words.Factors.Where(f => f.Key != key).ToDictionary() }),
        };
    }

    /// <summary>Makes a row the key one, and the others supporting.</summary>
    /// <param name="design">The design.</param>
    /// <param name="key">The row.</param>
    public static TaskDesign WithKey(TaskDesign design, string key) => design with
    {
        Factors = [.. design.Factors.Select(f => f with { Role = f.Key == key ? FactorRole.Key : FactorRole.Supporting })],
    };

    /// <summary>Says whether a row changes the movement or how much of it there is.</summary>
    /// <param name="design">The design.</param>
    /// <param name="key">The row.</param>
    /// <param name="kind">Which of the two.</param>
    public static TaskDesign WithKind(TaskDesign design, string key, FactorKind kind) => Replace(design, Row(design, key) with { Kind = kind });

    private static FactorRole RoleOfNext(TaskDesign design) => design.Factors.Any(f => f.Role == FactorRole.Key) ? FactorRole.Supporting : FactorRole.Key;

    private static TaskFactor Row(TaskDesign design, string key) =>
        design.Factors.FirstOrDefault(f => f.Key == key) ?? throw new ArgumentException($"The grid has no row \"{key}\".", nameof(key));

    // A level that stood on a value that is gone has no place on the row until it is given one.
    private static TaskDesign Replace(TaskDesign design, TaskFactor row) => design with
    {
        Factors = [.. design.Factors.Select(f => f.Key == row.Key ? row : f)],
        Levels = [.. design.Levels.Select(l => l.Settings.TryGetValue(row.Key, out var at) && !row.Range.Contains(at)
            ? l with { Settings = l.Settings.Where(s => s.Key != row.Key).ToDictionary() }
            : l)],
    };

    // From the easy to the hard end numbers rise or fall; a row of one value does what its dose usually does.
    private static IReadOnlyList<FactorValue> Between(IReadOnlyList<FactorValue> range, FactorValue at, DoseKind kind)
    {
        var isFalling = range.Count > 1 ? range[0].Amount > range[^1].Amount : kind == DoseKind.TargetSizeM;
        return isFalling ? [.. range.Append(at).OrderByDescending(v => v.Amount)] : [.. range.Append(at).OrderBy(v => v.Amount)];
    }

    private static Dictionary<string, TaskWords> OfAll(TaskDesign design, Func<TaskWords, TaskWords> change) =>
        design.Words.ToDictionary(words => words.Key, words => change(words.Value));

    private static TaskWords WithFactor(TaskWords words, string key, FactorWords named) =>
        words with { Factors = words.Factors.Where(f => f.Key != key).Append(new(key, named)).ToDictionary() };

    private static IReadOnlyDictionary<string, string> ValuesOf(TaskWords words, string key) =>
        words.Factors.TryGetValue(key, out var named) ? named.Values : new Dictionary<string, string>();
}

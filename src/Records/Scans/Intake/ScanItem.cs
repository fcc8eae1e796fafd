using System.Text.Json.Serialization;
using Slantwise.Engines.Marks;

namespace Slantwise.Records.Scans.Intake;

/// <summary>One question a form answers: the level of a set, a prediction, a trial, a cue, what comes next, what a teacher saw of a cue.</summary>
public sealed record ScanItem
{
    /// <summary>
    /// The question. Of fields that exclude each other the first stands for all: <c>Held</c> for a trial, <c>TeacherMet</c> for a teacher's check; the number of a
    /// level, a prediction, of what comes next and of the set a teacher watched is 0.
    /// </summary>
    public required SheetField Question { get; init; }

    /// <summary>What its fields show, in the layout's order. Empty for something by hand.</summary>
    public IReadOnlyList<FieldReading> Fields { get; init; } = [];

    /// <summary>
    /// What the marks say: a level's or a set's number; a predicted number or seconds; 1 for held, ticked or met and 0 for not; <c>(int)</c> of a
    /// <see cref="Entries.NextLevel"/>; seconds. None where nothing is marked or where it is not certain.
    /// </summary>
    public decimal? Value { get; init; }

    /// <summary>Why somebody has to look.</summary>
    public ScanDoubt Doubt { get; init; }

    /// <summary>What is on record, where <see cref="Doubt"/> is <see cref="ScanDoubt.Differs"/>.</summary>
    public decimal? Before { get; init; }

    /// <summary>What a person said; none so far.</summary>
    public ScanAnswer? Answer { get; init; }

    /// <summary>The key of its pictures, and what to answer it by.</summary>
    [JsonIgnore]
    public string Key => Question.Key;

    /// <summary>Whether somebody has to look and has not.</summary>
    [JsonIgnore]
    public bool IsWaiting => Doubt is not (ScanDoubt.None or ScanDoubt.ByHand) && Answer is null;

    /// <summary>What holds: the answer where there is one, else what the marks say where that is certain.</summary>
    [JsonIgnore]
    public decimal? Settled => Answer is { } answer ? answer.Value : Doubt == ScanDoubt.None ? Value : null;

    /// <summary>
    /// How sure the marks are, 0.5 to 1: that of the least sure field, as calibrated; 1 for something by hand, which is not read.
    /// </summary>
    [JsonIgnore]
    public double CertainFraction => Fields.Select(f => Math.Max(f.MarkedFraction, 1 - f.MarkedFraction)).DefaultIfEmpty(1).Min();

    /// <summary>
    /// What could be answered, as the form offers it: a value for each of its fields, in the order printed. A level's place here, from 1, is the number that
    /// stands on this pupil's paper. Empty for something by hand.
    /// </summary>
    [JsonIgnore]
    public IReadOnlyList<decimal> Choices => Question.Kind == SheetFieldKind.Cue
        ? [1, 0]
        : [.. Fields.Select(f => SheetField.FromKey(f.Key)).OfType<SheetField>().Select(ScanItems.ValueOf)];
}

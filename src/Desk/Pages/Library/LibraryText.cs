using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Words;

namespace Slantwise.Desk.Pages.Library;

/// <summary>The facts of a task in sentences, in the reader's language.</summary>
public static class LibraryText
{
    private static CultureInfo Language => CultureInfo.CurrentUICulture;

    /// <summary>The mats: "1 mat for each pupil".</summary>
    /// <param name="mats">Any need of mats.</param>
    public static string Of(MatNeed mats) => mats.MatCount == 0
        ? LibraryWords.Say("MatsNone")
        : LibraryWords.SayCount("Mats", mats.MatCount, TaskTerms.Of(mats.Per, Language));

    /// <summary>The mats, and what else a task of the library takes.</summary>
    /// <param name="entry">A task of the library.</param>
    public static string TakesOf(LibraryEntry entry) => LibraryNeeds.Of(entry) is var need and (LibraryNeed.Rope or LibraryNeed.Ball or LibraryNeed.More)
        ? LibraryWords.Say("TakesToo", Of(entry.Design.Mats), LibraryWords.Say("Takes" + need))
        : Of(entry.Design.Mats);

    /// <summary>The floor that stays free, and where the number comes from.</summary>
    /// <param name="space">Any clear space.</param>
    public static string Of(ClearSpace space) => LibraryWords.Say(
        "SpaceAround",
        space.SpaceM.ToString("0.##", CultureInfo.CurrentCulture),
        space.Source == ClearSpace.CommonPractice ? LibraryWords.Say("SourceCommon") : LibraryWords.Say("SourceKey", space.Source));

    /// <summary>What carries the body: "hands, feet".</summary>
    /// <param name="parts">Any parts.</param>
    public static string Of(IEnumerable<SupportPart> parts) => string.Join(", ", parts.Select(part => TaskTerms.Of(part, Language)));

    /// <summary>What an adaptation starts from, as the beginning of its sentence: "Sees little:".</summary>
    /// <param name="need">Any need.</param>
    public static string Of(FunctionNeed need)
    {
        var said = TaskTerms.Of(need, Language);
        return $"{char.ToUpper(said[0], Language)}{said[1..]}:";
    }

    /// <summary>What any level asks of the body, each once; a sentence where none asks anything.</summary>
    /// <param name="entry">The task.</param>
    public static string DemandsOf(LibraryEntry entry) => entry.Design.Needs is { Count: > 0 } needs
        ? string.Join(", ", needs.Select(Words.TaskWords.Of))
        : LibraryWords.Say("AsksNothing");

    /// <summary>What a factor is called.</summary>
    /// <param name="entry">The task.</param>
    /// <param name="factor">A row of its grid.</param>
    public static string Of(LibraryEntry entry, TaskFactor factor) => TaskTerms.Of(factor, entry.Words, Language);

    /// <summary>What a value of a factor means, with its unit where the factor's name does not say it.</summary>
    /// <param name="entry">The task.</param>
    /// <param name="factor">A row of its grid.</param>
    /// <param name="value">One of the row's values; none where a level does not stand on it.</param>
    public static string Of(LibraryEntry entry, TaskFactor factor, FactorValue? value)
    {
        if (value is not { } at) return LibraryWords.Say("NoValue");
        var said = TaskTerms.Of(factor, at, entry.Words, CultureInfo.CurrentCulture);
        return at.Amount is null || factor.Unit is not { } unit ? said : LibraryWords.Say("Value" + unit, said);
    }

    /// <summary>A factor's range from its easy to its hard end.</summary>
    /// <param name="entry">The task.</param>
    /// <param name="factor">A row of its grid.</param>
    public static string RangeOf(LibraryEntry entry, TaskFactor factor) => string.Join(" · ", factor.Range.Select(value => Of(entry, factor, value)));

    /// <summary>What changes from the level before to a level, a sentence for each factor that moves.</summary>
    /// <param name="entry">The task.</param>
    /// <param name="index">The level's place, from 0.</param>
    /// <returns>Empty for the first level.</returns>
    public static IReadOnlyList<string> ChangesTo(LibraryEntry entry, int index)
    {
        if (index == 0) return [];
        var (before, now) = (entry.Design.Levels[index - 1], entry.Design.Levels[index]);
        return [.. entry.Design.Moved(before, now).Select(factor =>
            LibraryWords.Say("Moves", Of(entry, factor), Quoted(entry, factor, before.ValueOf(factor)), Quoted(entry, factor, now.ValueOf(factor))))];
    }

    // A value in words may hold a comma, and a sentence must not come apart at it.
    private static string Quoted(LibraryEntry entry, TaskFactor factor, FactorValue? value) =>
        value is { Amount: null } ? LibraryWords.Say("Quoted", Of(entry, factor, value)) : Of(entry, factor, value);
}

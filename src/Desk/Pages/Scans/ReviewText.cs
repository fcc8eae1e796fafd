using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Intake;

namespace Slantwise.Desk.Pages.Scans;

/// <summary>What a card asks, in words.</summary>
public static class ReviewText
{
    /// <summary>Where the box stands and what it is: "One-foot balance, set 2: Level".</summary>
    /// <param name="card">The card.</param>
    public static string Asks(ReviewCard card) => ScanItemWords.Asks(card.Item, card.Printed, CultureInfo.CurrentUICulture);

    /// <summary>Why somebody has to look, as a question.</summary>
    /// <param name="card">The card.</param>
    public static string Doubt(ReviewCard card)
    {
        var (item, culture) = (card.Item, CultureInfo.CurrentUICulture);
        return item.Doubt switch
        {
            ScanDoubt.Faint when ReviewChoices.Shown(item) is { } shown => ScanPageWords.Say("DoubtFaintAt", ReviewChoices.Label(item, shown, card.Printed, culture)),
            _ => ScanItemWords.Doubts(item, card.Printed, culture),
        };
    }

    /// <summary>What was answered.</summary>
    /// <param name="card">An answered card.</param>
    public static string Answered(ReviewCard card) => ScanPageWords.Say("YouSaid", card.Answer is null && card.Item.Question.Kind != SheetFieldKind.Seconds
        ? ScanPageWords.Say("Nothing")
        : ReviewChoices.Label(card.Item, card.Answer, card.Printed, CultureInfo.CurrentUICulture));

    /// <summary>The typed seconds; none for an empty text.</summary>
    /// <param name="text">What was typed, with a point or a comma.</param>
    /// <param name="seconds">The seconds.</param>
    /// <returns>Whether it is empty or a number of seconds from 0 to 600.</returns>
    public static bool TrySeconds(string? text, out decimal? seconds)
    {
        seconds = null;
        if (string.IsNullOrWhiteSpace(text)) return true;
        if (!decimal.TryParse(text.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var read) || read > 600) return false;
        seconds = Math.Round(read, 1);
        return true;
    }
}

using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Intake;
using Slantwise.Records.Scans.Pictures;
using Slantwise.Records.Sheets;

namespace Slantwise.Desk.Pages.Scans;

/// <summary>A box somebody has to look at, with what was said to it so far.</summary>
public sealed class ReviewCard
{
    /// <summary>A card.</summary>
    /// <param name="scan">Its page.</param>
    /// <param name="item">The box.</param>
    /// <param name="who">The pupil it is about, as shown.</param>
    /// <param name="printed">The sheet it was printed from.</param>
    public ReviewCard(Scan scan, ScanItem item, string who, SheetContent printed) => (Scan, Item, Who, Printed) = (scan, item, who, printed);

    /// <summary>The page.</summary>
    public Scan Scan { get; }

    /// <summary>The box, as it is stored.</summary>
    public ScanItem Item { get; internal set; }

    /// <summary>The pupil it is about, as shown.</summary>
    public string Who { get; }

    /// <summary>The sheet it was printed from.</summary>
    public SheetContent Printed { get; }

    /// <summary>The card among others, and in the page.</summary>
    public string Key => $"{Scan.Id:N}-{Item.Key}";

    /// <summary>Whether it asks for seconds, which nothing waits for.</summary>
    public bool IsSeconds => Item.Question.Kind == SheetFieldKind.Seconds;

    /// <summary>Whether somebody has answered, stored or on its way.</summary>
    public bool IsAnswered => OnItsWay is { } way ? way.IsAnswer : Item.Answer is not null;

    /// <summary>What was answered; none for "nothing there", and where nothing was.</summary>
    public decimal? Answer => OnItsWay is { } way ? way.Value : Item.Answer?.Value;

    /// <summary>The picture of the box.</summary>
    public string Picture => $"/scans/{Scan.Id}/pictures/{Item.Key}";

    /// <summary>The picture of what stands around it.</summary>
    public string Row => $"/scans/{Scan.Id}/pictures/{ScanPicture.RowOf(Item.Key)}";

    /// <summary>An answer, or the taking back of one, that is not stored yet.</summary>
    internal (bool IsAnswer, decimal? Value)? OnItsWay { get; set; }
}

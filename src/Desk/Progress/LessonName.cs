using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Records.Lessons;

namespace Slantwise.Desk.Progress;

/// <summary>What lessons and their days are called on the pages.</summary>
public static class LessonName
{
    /// <summary>The lesson's title, or a word for one without.</summary>
    /// <param name="lesson">Any lesson.</param>
    public static string Of(Lesson lesson) =>
        string.IsNullOrWhiteSpace(lesson.Title) ? DeskWords.Say("UntitledLesson") : lesson.Title;

    /// <summary>A day as a person says it: today, tomorrow, yesterday, or the weekday and date.</summary>
    /// <param name="day">The day to name.</param>
    /// <param name="today">The day it is named on.</param>
    public static string Day(DateOnly day, DateOnly today)
    {
        var culture = CultureInfo.CurrentCulture;
        var date = day.Year == today.Year
            ? DeskWords.Say("WeekdayAndDate", day.ToString("dddd", culture), day.ToString("M", culture))
            : day.ToString("D", culture);
        return (day.DayNumber - today.DayNumber) switch
        {
            0 => DeskWords.Say("DayToday", date),
            1 => DeskWords.Say("DayTomorrow", date),
            -1 => DeskWords.Say("DayYesterday", date),
            _ => date,
        };
    }
}

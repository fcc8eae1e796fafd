using Slantwise.Records.Entries;
using Slantwise.Records.Evidence;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>A talk to note, as the form's button carries it.</summary>
/// <param name="PupilId">The pupil talked with.</param>
/// <param name="TaskId">The task talked about; none where no task was meant.</param>
/// <param name="Topic">What it was about.</param>
public sealed record TalkKey(Guid PupilId, Guid? TaskId, VisitTopic Topic)
{
    /// <summary>The button's value for a conference.</summary>
    public static string Of(Conference conference) => $"{conference.PupilId:N}.{conference.TaskId:N}.{conference.Topic}";

    /// <summary>Reads a button's value back.</summary>
    /// <returns>None for a text that <see cref="Of"/> never makes.</returns>
    public static TalkKey? Read(string? text)
    {
        var parts = (text ?? "").Split('.');
        if (parts.Length != 3 || !Guid.TryParseExact(parts[0], "N", out var pupil)) return null;
        Guid? task = null;
        if (parts[1].Length > 0)
        {
            if (!Guid.TryParseExact(parts[1], "N", out var taskId)) return null;
            task = taskId;
        }
        return Enum.TryParse<VisitTopic>(parts[2], out var topic) && Enum.IsDefined(topic) ? new(pupil, task, topic) : null;
    }
}

using System.Text;
using Slantwise.Records.Tasks.Designs;

namespace Slantwise.Records.Tasks.Files;

/// <summary>A whole task as readable JSON: facts and words in one file to hand on, or the facts in one file and the words in another for each language.</summary>
/// <remarks>What the files hold is described in docs/tasks.md. Comments and a comma too many are passed over, and so are fields this version does not know, with a finding.</remarks>
public static class DesignFile
{
    /// <summary>The format of a task's facts, with or without words.</summary>
    public const string Format = "slantwise-task/2";

    /// <summary>The format of a file that holds a task's words in one language.</summary>
    public const string WordsFormat = "slantwise-task-words/2";

    /// <summary>Mats for a pupil or a pair, at most.</summary>
    public const int MatCountMost = 4;

    /// <summary>Reads a task from one file.</summary>
    /// <param name="fileName">What findings call the file.</param>
    /// <param name="text">Its whole text.</param>
    /// <returns>The task with the words that the file holds, or none and at least one finding that refuses it and says where.</returns>
    public static DesignReading Read(string fileName, string text) => new DesignReader(fileName).Read(text);

    /// <summary>Writes a task with all its words as one file.</summary>
    /// <param name="design">Any task.</param>
    /// <returns>The file's text, ending in a line feed. Reading it gives the same task.</returns>
    public static string Write(TaskDesign design) => DesignWriter.Text(json => DesignWriter.Facts(json, design, withWords: true));

    /// <summary>Writes a task's facts without words.</summary>
    /// <param name="design">Any task.</param>
    /// <returns>The file's text, ending in a line feed.</returns>
    public static string WriteFacts(TaskDesign design) => DesignWriter.Text(json => DesignWriter.Facts(json, design, withWords: false));

    /// <summary>Writes a task's words in one language.</summary>
    /// <param name="words">The words.</param>
    /// <returns>The file's text, ending in a line feed.</returns>
    public static string WriteWords(TaskWords words) => DesignWriter.Text(json =>
    {
        json.WriteStartObject();
        json.WriteString("format", WordsFormat);
        DesignWriter.Words(json, words);
        json.WriteEndObject();
    });

    internal static bool IsLanguage(string name) => name.Length == 2 && name.All(char.IsAsciiLetterLower);
}

using System.Text;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Markup;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Formats;

/// <summary>The first screen of a house's week to send by mail, with its page as one file.</summary>
/// <param name="Subject">Subject, one line.</param>
/// <param name="PlainBody">As plain text.</param>
/// <param name="HtmlBody">As HTML without script, with styles in the elements, as mail programs take it.</param>
/// <param name="FileName">Name of the page's file.</param>
/// <param name="Page">The page as one file.</param>
public sealed record WeekLetter(string Subject, string PlainBody, string HtmlBody, string FileName, byte[] Page)
{
    /// <summary>Most changes that the letter names.</summary>
    private const int Most = WhatToChangeCell.Most;

    internal static WeekLetter Of(Review review, DisplayUnits units, string fileName, byte[] page)
    {
        CellContext context = CellContext.Of(review, units, []);
        string title = $"{OneLine(review.House.Name)}, {PeriodWords.Name(review.Period)}";
        string hours = review.RiskHours is { } risk ? Phrase.Of($"{Words.WithRange(risk)} risk hours") : Phrase.Of("risk hours not known");
        string subject = $"{title}: {hours}{(review.House.Invented ? Phrase.Of(" (invented demonstration data)") : "")}";
        string under = $"{PeriodWords.Dates(review.Period)} · {OneLine(review.House.Nursery)}";
        string said = new WeekInBriefCell().Render(context).Sentence;
        (string Name, string Value)[] numbers = [.. Numbers(context)];
        Finding[] findings = [.. review.Findings.OrderBy(f => f.Rank).Take(Most)];
        CalendarDay[] days = review.Hours.IsEmpty ? [] : [.. CalendarGrid.Of(review.Hours).Days];
        return new WeekLetter(subject, PlainText(review, title, under, said, numbers, findings, days), Markup(review, title, under, said, numbers, findings, days), fileName, page);
    }

    private static IEnumerable<(string Name, string Value)> Numbers(CellContext context)
    {
        Review review = context.Review;
        yield return (Phrase.Of("Risk hours"), With(review.RiskHours is { } risk ? Words.WithRange(risk) : DisplayUnits.NotKnown, review.RiskHoursBefore is { } before ? Words.WithRange(before) : null));
        if (context.Facts.LeafWettings is > 0 and { } all)
        {
            yield return (Phrase.Of("Late wettings of leaves"), With(
                Phrase.Of($"{context.Facts.LateLeafWettings} of {all}"), review.WeekBefore is { LeafWettings: { } wettings, LateLeafWettings: { } late } ? Phrase.Of($"{late} of {wettings}") : null));
        }

        yield return (Phrase.Of("Hours with data"), With(Phrase.Of($"{review.Coverage.HoursWithData} of {review.Coverage.ExpectedHours}"), review.WeekBefore is { } week ? Words.Whole(week.HoursWithData) : null));
    }

    private static string With(string now, string? before) => $"{now}; {WeekInBriefCell.Before(before)}";

    private static string PlainText(Review review, string title, string under, string said, (string Name, string Value)[] numbers, Finding[] findings, CalendarDay[] days)
    {
        StringBuilder text = new();
        text.Append(title).Append('\n').Append(under).Append("\n\n");
        if (review.House.Invented)
        {
            text.Append(Invented).Append("\n\n");
        }

        text.Append(said).Append("\n\n");
        foreach ((string name, string value) in numbers)
        {
            text.Append(name).Append(": ").Append(value).Append('\n');
        }

        text.Append('\n').Append(Phrase.Of("What to change")).Append('\n');
        foreach (Finding finding in findings)
        {
            text.Append("- ").Append(Short(finding)).Append("\n  ").Append(finding.Text).Append(finding.Action.Length > 0 ? "\n  " : "").Append(finding.Action).Append('\n');
        }

        text.Append('\n').Append(Phrase.Of("Risk hours by day")).Append('\n');
        foreach (CalendarDay day in days)
        {
            text.Append(LocalTimes.Day(day.Date)).Append(": ").Append(OfDay(day)).Append('\n');
        }

        return text.Append('\n').Append(Attached).Append('\n').Append(Caution).Append('\n').ToString();
    }

    private static string Markup(Review review, string title, string under, string said, (string Name, string Value)[] numbers, Finding[] findings, CalendarDay[] days)
    {
        HtmlBuilder body = new();
        body.Line($"<!DOCTYPE html><html lang=\"{Language.Current.Code}\"><head><meta charset=\"utf-8\"><title>{title}</title></head>");
        body.Line($"<body style=\"font:16px/1.45 system-ui,sans-serif;color:#1d2733;background:#ffffff;max-width:40rem;margin:0;padding:8px\">");
        body.Line($"<h1 style=\"font-size:1.3em;margin:0\">{Html.Name(title)}</h1><p style=\"color:#4e5a66;margin:.2em 0 1em\">{Html.Name(under)}</p>");
        if (review.House.Invented)
        {
            body.Line($"<p style=\"border:1px solid #8a6d00;background:#fff6d6;padding:.3em .6em\"><strong>{Invented}</strong></p>");
        }

        body.Line($"<p style=\"font-size:1.1em\">{said}</p><ul>");
        foreach ((string name, string value) in numbers)
        {
            body.Line($"<li>{name}: <strong>{value}</strong></li>");
        }

        body.Line($"</ul><h2 style=\"font-size:1.1em\">What to change</h2><ul>");
        foreach (Finding finding in findings)
        {
            body.Line($"<li style=\"margin:.5em 0\"><strong>{Short(finding)}</strong><br>{finding.Text}<br>{finding.Action}</li>");
        }

        body.Line($"</ul><h2 style=\"font-size:1.1em\">Risk hours by day</h2><table style=\"border-collapse:collapse\">");
        foreach (CalendarDay day in days)
        {
            body.Add($"<tr><th scope=\"row\" style=\"text-align:left;font-weight:400;padding-right:.6em;white-space:nowrap\">{LocalTimes.Day(day.Date)}</th>");
            foreach (ReviewHour hour in day.Hours.OrderBy(h => h.Key.Hour).ThenBy(h => h.Key.Turn).Select(h => h.Value))
            {
                body.Add($"<td style=\"width:10px;height:18px;background:{Colour(RiskLevels.Of(hour))};border:1px solid #ffffff\"></td>");
            }

            body.Line($"<td style=\"padding-left:.6em\">{OfDay(day)}</td></tr>");
        }

        body.Line($"</table><p>{Attached}</p><p style=\"color:#4e5a66;font-size:.85em\">{Caution}</p></body></html>");
        return body.ToHtml().ToString();
    }

    private static string Short(Finding finding)
        => (finding.Title.Length > 0 ? finding.Title : finding.Text) + (finding.RiskHoursAvoided is { } saved ? Phrase.Of($" (saves {DisplayUnits.Number(saved.Value, 0)} h; {Words.Range(saved)})") : "");

    private static string OfDay(CalendarDay day) => day.Hours.Values.All(h => RiskLevels.Of(h) == RiskLevel.Unknown)
        ? DisplayUnits.NotKnown
        : Words.Count(day.Hours.Values.Count(h => h.Risk == true), "risk hour", "risk hours");

    private static string Colour(RiskLevel level) => level switch
    {
        RiskLevel.None => "#f4f6f8",
        RiskLevel.Possible => "#fbe3d3",
        RiskLevel.Likely => "#ee9f6b",
        RiskLevel.NearlySure => "#a8400a",
        _ => "#b9c1c9",
    };

    private static string Invented => Phrase.Of("Invented demonstration data. This nursery does not exist; nothing here was measured.");

    private static string Attached => Phrase.Of("The whole page is attached as one file; open it in a browser.");

    private static string Caution => Phrase.Of("Advice from sensor data, for people who know the crop. Look before you act.");

    /// <summary>A name of a user on one line: a header of a message must not end early.</summary>
    private static string OneLine(string name) => string.Concat(name.Select(c => char.IsControl(c) || c is '\u2028' or '\u2029' ? ' ' : c)).Trim();
}

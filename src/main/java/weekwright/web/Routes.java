package weekwright.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.App;
import weekwright.files.picture.PhotoFiles;
import weekwright.forecast.LeverFutures;
import weekwright.forecast.Records;
import weekwright.forecast.SlotFutures;
import weekwright.funds.WaitingFiles;
import weekwright.site.Site;
import weekwright.web.account.AccountConfirmPage;
import weekwright.web.account.AccountLogInPage;
import weekwright.web.account.AccountPage;
import weekwright.web.account.AccountPassphrasePage;
import weekwright.web.account.AccountStartPage;
import weekwright.web.ahead.AheadForecastsPage;
import weekwright.web.ahead.AheadLearnedPage;
import weekwright.web.ahead.AheadLeversPage;
import weekwright.web.ahead.AheadPage;
import weekwright.web.ahead.AheadRecordPage;
import weekwright.web.ahead.AheadState;
import weekwright.web.build.BuildEquipmentEditPage;
import weekwright.web.build.BuildEquipmentNewPage;
import weekwright.web.build.BuildEquipmentPage;
import weekwright.web.build.BuildGiftsNewPage;
import weekwright.web.build.BuildGiftsPage;
import weekwright.web.build.BuildMaterialCancelPage;
import weekwright.web.build.BuildMaterialEditPage;
import weekwright.web.build.BuildMaterialPage;
import weekwright.web.build.BuildPage;
import weekwright.web.build.BuildShiftPage;
import weekwright.web.build.BuildStageEditPage;
import weekwright.web.build.BuildStageMaterialsPage;
import weekwright.web.build.BuildStageNetworkPage;
import weekwright.web.build.BuildStagePage;
import weekwright.web.build.BuildStageRemovePage;
import weekwright.web.build.BuildStageTasksEditPage;
import weekwright.web.build.BuildStagesNewPage;
import weekwright.web.build.BuildStockEditPage;
import weekwright.web.build.BuildStockNewPage;
import weekwright.web.build.BuildStockPage;
import weekwright.web.build.BuildStockValuesPage;
import weekwright.web.build.BuildTaskDaySheetPage;
import weekwright.web.build.BuildTaskEditPage;
import weekwright.web.build.BuildTaskMaterialsNewPage;
import weekwright.web.build.BuildTaskPage;
import weekwright.web.build.BuildTaskRemovePage;
import weekwright.web.build.BuildTaskSplitPage;
import weekwright.web.build.BuildTasksNewPage;
import weekwright.web.build.GiftsSheet;
import weekwright.web.come.ComePage;
import weekwright.web.crew.CrewBackupsPage;
import weekwright.web.crew.CrewCalendarsPage;
import weekwright.web.crew.CrewCautionEditPage;
import weekwright.web.crew.CrewCautionsNewPage;
import weekwright.web.crew.CrewDaysPage;
import weekwright.web.crew.CrewGatheringEditPage;
import weekwright.web.crew.CrewGatheringsNewPage;
import weekwright.web.crew.CrewHistoryPage;
import weekwright.web.crew.CrewHistoryRemovedPage;
import weekwright.web.crew.CrewHistoryThingPage;
import weekwright.web.crew.CrewHourEditPage;
import weekwright.web.crew.CrewHoursNewPage;
import weekwright.web.crew.CrewIncidentEditPage;
import weekwright.web.crew.CrewIncidentsNewPage;
import weekwright.web.crew.CrewLogInsPage;
import weekwright.web.crew.CrewMarksPage;
import weekwright.web.crew.CrewMemberEditPage;
import weekwright.web.crew.CrewMembersNewPage;
import weekwright.web.crew.CrewOffEditPage;
import weekwright.web.crew.CrewOffNewPage;
import weekwright.web.crew.CrewPage;
import weekwright.web.crew.CrewSafetyPage;
import weekwright.web.crew.CrewSettingsPage;
import weekwright.web.crew.CrewStoppedEditPage;
import weekwright.web.crew.CrewStoppedNewPage;
import weekwright.web.episodes.EpisodeCreditsPage;
import weekwright.web.episodes.EpisodeEditPage;
import weekwright.web.episodes.EpisodeOrderPage;
import weekwright.web.episodes.EpisodePage;
import weekwright.web.episodes.EpisodeRemovePage;
import weekwright.web.episodes.EpisodeRightsPage;
import weekwright.web.episodes.EpisodeSlotPage;
import weekwright.web.episodes.EpisodesFootageEditPage;
import weekwright.web.episodes.EpisodesFootageNewPage;
import weekwright.web.episodes.EpisodesFootagePage;
import weekwright.web.episodes.EpisodesNewPage;
import weekwright.web.episodes.EpisodesPage;
import weekwright.web.episodes.EpisodesSlotPage;
import weekwright.web.episodes.EpisodesSlotsPage;
import weekwright.web.funds.BooksSheet;
import weekwright.web.funds.FundsBalancePage;
import weekwright.web.funds.FundsCostsNewPage;
import weekwright.web.funds.FundsEntriesNewPage;
import weekwright.web.funds.FundsEntryEditPage;
import weekwright.web.funds.FundsFilePage;
import weekwright.web.funds.FundsFileRowsPage;
import weekwright.web.funds.FundsFilesNewPage;
import weekwright.web.funds.FundsFilesPage;
import weekwright.web.funds.FundsLadderPage;
import weekwright.web.funds.FundsLedgerPage;
import weekwright.web.funds.FundsLevelEditPage;
import weekwright.web.funds.FundsLevelsNewPage;
import weekwright.web.funds.FundsLevelsPage;
import weekwright.web.funds.FundsMonthPage;
import weekwright.web.funds.FundsMonthsPage;
import weekwright.web.funds.FundsOrdersPage;
import weekwright.web.funds.FundsPage;
import weekwright.web.funds.FundsPurchasesPage;
import weekwright.web.funds.FundsReceiptsPage;
import weekwright.web.funds.FundsRegularEditPage;
import weekwright.web.funds.FundsRegularNewPage;
import weekwright.web.funds.FundsRegularPage;
import weekwright.web.funds.FundsStagesPage;
import weekwright.web.funds.FundsSupplierEditPage;
import weekwright.web.funds.FundsSuppliersNewPage;
import weekwright.web.funds.FundsSuppliersPage;
import weekwright.web.funds.FundsSupportersPage;
import weekwright.web.funds.FundsYearsPage;
import weekwright.web.funds.MonthSheet;
import weekwright.web.funds.OrdersSheet;
import weekwright.web.funds.Receipts;
import weekwright.web.funds.SupportersSheet;
import weekwright.web.funds.YearZip;
import weekwright.web.help.HelpPage;
import weekwright.web.help.HelpWordsPage;
import weekwright.web.kit.Access;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.Page;
import weekwright.web.log.LogAgainPage;
import weekwright.web.log.LogEntryEditPage;
import weekwright.web.log.LogPage;
import weekwright.web.log.LogWeekPage;
import weekwright.web.notes.NoteEditPage;
import weekwright.web.notes.NotePage;
import weekwright.web.notes.NotePictureEditPage;
import weekwright.web.notes.NotePicturesNewPage;
import weekwright.web.notes.NoteText;
import weekwright.web.notes.NotesBookPage;
import weekwright.web.notes.NotesFilesNewPage;
import weekwright.web.notes.NotesNewPage;
import weekwright.web.notes.NotesPage;
import weekwright.web.notes.NotesPicturesPage;
import weekwright.web.notes.NotesPublicPage;
import weekwright.web.notes.Photos;
import weekwright.web.search.SearchPage;
import weekwright.web.site.PublicPages;
import weekwright.web.start.NewProject;
import weekwright.web.start.StartBuildPage;
import weekwright.web.start.StartExamplePage;
import weekwright.web.start.StartFilesPage;
import weekwright.web.start.StartMoneyPage;
import weekwright.web.start.StartNewPage;
import weekwright.web.start.StartPage;
import weekwright.web.week.CalendarFeed;
import weekwright.web.week.WeekLineEditPage;
import weekwright.web.week.WeekLinesNewPage;
import weekwright.web.week.WeekPage;
import weekwright.web.week.WeekSheetPage;
import weekwright.web.week.WeekShotEditPage;
import weekwright.web.week.WeekShotPage;
import weekwright.web.week.WeekShotsNewPage;
import weekwright.web.week.WeekShotsPage;
import weekwright.web.week.WeekWordsPage;

/** The one list of all addresses, with who may use each. A new page is a line here. */
public final class Routes {
    private static final String SAMPLE =
            "This is the sample: an invented crew rebuilds an oak water mill. Its clock began"
                    + " on 25 November 2026. Change what you like; it is gone when the program stops.";

    private final List<Line> pages;
    private final List<Other> others;

    /**
     * A page.
     *
     * @param access who may see it
     * @param posts whether it takes posts too
     * @param submitting who may post to it
     * @param confirmed whether a post needs the passphrase typed within the last ten minutes, where there are log-ins
     */
    public record Line(String path, Access access, boolean posts, Access submitting, boolean confirmed, Page page) {
        /** Who may see it may post to it. */
        Line(String path, Access access, boolean posts, Page page) {
            this(path, access, posts, access, false, page);
        }
    }

    /** An address that is no page; it answers GET and HEAD. */
    public record Other(String path, Access access, Fragment fragment) {}

    /** @param app over any folder, an empty one too */
    public Routes(App app) {
        NewProject start = new NewProject(app.folder(), app::create);
        SlotFutures futures = new SlotFutures();
        WaitingFiles waiting = new WaitingFiles();
        List<Line> all = new ArrayList<>(List.of(
                form("/account", Access.PUBLIC, new AccountPage()),
                form("/account/log-in", Access.PUBLIC, new AccountLogInPage(app.entrance())),
                form("/account/confirm", Access.HELPER, new AccountConfirmPage(app.entrance())),
                form("/account/start", Access.PUBLIC, new AccountStartPage(app.entrance())),
                form("/account/passphrase", Access.HELPER, new AccountPassphrasePage(app.entrance())),
                form("/start", Access.PUBLIC, new StartPage(start)),
                form("/start/new", Access.PUBLIC, new StartNewPage(start)),
                form("/start/files", Access.PUBLIC, new StartFilesPage(start)),
                form("/start/example", Access.CREW, new StartExamplePage()),
                form("/start/build", Access.CREW, new StartBuildPage()),
                form("/start/money", Access.CREW, new StartMoneyPage()),
                form("/ahead", Access.CREW, new AheadPage()),
                sheet("/ahead/learned", Access.CREW, new AheadLearnedPage()),
                sheet("/ahead/record", Access.CREW, new AheadRecordPage(new Records())),
                form("/ahead/forecasts", Access.CREW, new AheadForecastsPage()),
                form("/ahead/levers", Access.CREW, new AheadLeversPage(new LeverFutures())),
                sheet("/week", Access.HELPER, new WeekPage()),
                form("/week/sheet", Access.CREW, new WeekSheetPage()),
                sheet("/week/words", Access.CREW, new WeekWordsPage()),
                form("/week/lines/new", Access.CREW, new WeekLinesNewPage()),
                form("/week/lines/{row}/edit", Access.CREW, new WeekLineEditPage()),
                form("/come/{code}", Access.PUBLIC, new ComePage()),
                form("/week/shots", Access.HELPER, new WeekShotsPage()),
                form("/week/shots/new", Access.CREW, new WeekShotsNewPage()),
                form("/week/shots/{row}", Access.HELPER, new WeekShotPage()),
                form("/week/shots/{row}/edit", Access.CREW, new WeekShotEditPage()),
                form("/log", Access.HELPER, new LogPage()),
                form("/log/again", Access.HELPER, new LogAgainPage()),
                sheet("/log/week", Access.HELPER, new LogWeekPage()),
                form("/log/entries/{row}/edit", Access.HELPER, new LogEntryEditPage()),
                form("/build", Access.HELPER, Access.CREW, new BuildPage()),
                form("/build/shift", Access.CREW, new BuildShiftPage()),
                form("/build/stages/new", Access.CREW, new BuildStagesNewPage()),
                form("/build/stages/{id}", Access.HELPER, Access.CREW, new BuildStagePage()),
                form("/build/stages/{id}/edit", Access.CREW, new BuildStageEditPage()),
                form("/build/stages/{id}/remove", Access.CREW, new BuildStageRemovePage()),
                sheet("/build/stages/{id}/network", Access.CREW, new BuildStageNetworkPage()),
                form("/build/stages/{id}/tasks/edit", Access.CREW, new BuildStageTasksEditPage()),
                form("/build/tasks/new", Access.CREW, new BuildTasksNewPage()),
                form("/build/tasks/{id}", Access.HELPER, Access.CREW, new BuildTaskPage()),
                form("/build/tasks/{id}/edit", Access.CREW, new BuildTaskEditPage()),
                form("/build/tasks/{id}/day-sheet", Access.CREW, new BuildTaskDaySheetPage()),
                form("/build/tasks/{id}/split", Access.CREW, new BuildTaskSplitPage()),
                form("/build/tasks/{id}/remove", Access.CREW, new BuildTaskRemovePage()),
                form("/build/tasks/{id}/materials/new", Access.CREW, new BuildTaskMaterialsNewPage()),
                form("/build/materials/{id}", Access.CREW, new BuildMaterialPage()),
                form("/build/materials/{id}/cancel", Access.CREW, new BuildMaterialCancelPage()),
                form("/build/materials/{id}/edit", Access.CREW, new BuildMaterialEditPage()),
                sheet("/build/stages/{id}/materials", Access.CREW, new BuildStageMaterialsPage()),
                form("/build/gifts", Access.CREW, new BuildGiftsPage()),
                form("/build/gifts/new", Access.CREW, new BuildGiftsNewPage()),
                sheet("/build/stock/values", Access.CREW, new BuildStockValuesPage()),
                sheet("/build/stock", Access.CREW, new BuildStockPage()),
                form("/build/stock/new", Access.CREW, new BuildStockNewPage()),
                form("/build/stock/{id}/edit", Access.CREW, new BuildStockEditPage()),
                sheet("/build/equipment", Access.CREW, new BuildEquipmentPage()),
                form("/build/equipment/new", Access.CREW, new BuildEquipmentNewPage()),
                form("/build/equipment/{id}/edit", Access.CREW, new BuildEquipmentEditPage()),
                form("/episodes", Access.CREW, new EpisodesPage()),
                form("/episodes/new", Access.CREW, new EpisodesNewPage()),
                sheet("/episodes/slots", Access.CREW, new EpisodesSlotsPage()),
                form("/episodes/slots/{day}", Access.CREW, new EpisodesSlotPage(futures)),
                sheet("/episodes/footage", Access.CREW, new EpisodesFootagePage()),
                form("/episodes/footage/new", Access.CREW, new EpisodesFootageNewPage()),
                form("/episodes/footage/{row}/edit", Access.CREW, new EpisodesFootageEditPage()),
                form("/episodes/{id}", Access.CREW, new EpisodePage()),
                form("/episodes/{id}/slot", Access.CREW, new EpisodeSlotPage(futures)),
                form("/episodes/{id}/order", Access.CREW, new EpisodeOrderPage()),
                form("/episodes/{id}/rights", Access.CREW, new EpisodeRightsPage()),
                form("/episodes/{id}/credits", Access.CREW, new EpisodeCreditsPage()),
                form("/episodes/{id}/edit", Access.CREW, new EpisodeEditPage()),
                form("/episodes/{id}/remove", Access.CREW, new EpisodeRemovePage()),
                sheet("/funds", Access.CREW, new FundsPage()),
                form("/funds/costs/new", Access.CREW, new FundsCostsNewPage()),
                sheet("/funds/ledger", Access.CREW, new FundsLedgerPage()),
                form("/funds/entries/new", Access.CREW, new FundsEntriesNewPage()),
                form("/funds/entries/{row}/edit", Access.CREW, new FundsEntryEditPage()),
                sheet("/funds/regular", Access.CREW, new FundsRegularPage()),
                form("/funds/regular/new", Access.CREW, new FundsRegularNewPage()),
                form("/funds/regular/{id}/edit", Access.CREW, new FundsRegularEditPage()),
                sheet("/funds/levels", Access.CREW, new FundsLevelsPage()),
                form("/funds/levels/new", Access.CREW, new FundsLevelsNewPage()),
                form("/funds/levels/{id}/edit", Access.CREW, new FundsLevelEditPage()),
                form("/funds/supporters", Access.CREW, new FundsSupportersPage()),
                sheet("/funds/suppliers", Access.CREW, new FundsSuppliersPage()),
                form("/funds/suppliers/new", Access.CREW, new FundsSuppliersNewPage()),
                form("/funds/suppliers/{id}/edit", Access.CREW, new FundsSupplierEditPage()),
                form("/funds/receipts", Access.CREW, new FundsReceiptsPage()),
                form("/funds/files", Access.CREW, new FundsFilesPage(waiting)),
                form("/funds/files/new", Access.CREW, new FundsFilesNewPage(waiting)),
                form("/funds/files/{key}", Access.CREW, new FundsFilePage(waiting)),
                form("/funds/files/{key}/rows", Access.CREW, new FundsFileRowsPage(waiting)),
                sheet("/funds/ladder", Access.CREW, new FundsLadderPage()),
                sheet("/funds/orders", Access.CREW, new FundsOrdersPage()),
                sheet("/funds/purchases", Access.CREW, new FundsPurchasesPage()),
                sheet("/funds/stages", Access.CREW, new FundsStagesPage()),
                sheet("/funds/years", Access.CREW, new FundsYearsPage()),
                sheet("/funds/months", Access.CREW, new FundsMonthsPage()),
                form("/funds/months/{month}", Access.CREW, new FundsMonthPage(waiting)),
                form("/funds/balance", Access.CREW, new FundsBalancePage()),
                sheet("/notes", Access.CREW, new NotesPage()),
                form("/notes/new", Access.CREW, new NotesNewPage()),
                sheet("/notes/book", Access.CREW, new NotesBookPage()),
                form("/notes/files/new", Access.CREW, new NotesFilesNewPage()),
                sheet("/notes/pictures", Access.CREW, new NotesPicturesPage()),
                confirmed("/notes/public", new NotesPublicPage()),
                sheet("/notes/{id}", Access.CREW, new NotePage()),
                form("/notes/{id}/edit", Access.CREW, new NoteEditPage()),
                form("/notes/{id}/pictures/new", Access.CREW, new NotePicturesNewPage()),
                form("/notes/{id}/pictures/{row}/edit", Access.CREW, new NotePictureEditPage()),
                sheet("/search", Access.HELPER, new SearchPage()),
                sheet("/help", Access.HELPER, new HelpPage(app.templates())),
                sheet("/help/words", Access.HELPER, new HelpWordsPage(app.templates())),
                sheet("/crew", Access.CREW, new CrewPage()),
                form("/crew/members/new", Access.CREW, new CrewMembersNewPage()),
                form("/crew/members/{id}/edit", Access.CREW, new CrewMemberEditPage()),
                confirmed("/crew/log-ins", new CrewLogInsPage()),
                confirmed("/crew/calendars", new CrewCalendarsPage()),
                confirmed("/crew/backups", new CrewBackupsPage()),
                sheet("/crew/days", Access.CREW, new CrewDaysPage()),
                form("/crew/safety", Access.CREW, new CrewSafetyPage()),
                form("/crew/off/new", Access.CREW, new CrewOffNewPage()),
                form("/crew/off/{row}/edit", Access.CREW, new CrewOffEditPage()),
                form("/crew/hours/new", Access.CREW, new CrewHoursNewPage()),
                form("/crew/hours/{row}/edit", Access.CREW, new CrewHourEditPage()),
                form("/crew/stopped/new", Access.CREW, new CrewStoppedNewPage()),
                form("/crew/stopped/{row}/edit", Access.CREW, new CrewStoppedEditPage()),
                form("/crew/gatherings/new", Access.CREW, new CrewGatheringsNewPage()),
                form("/crew/gatherings/{row}/edit", Access.CREW, new CrewGatheringEditPage()),
                form("/crew/incidents/new", Access.CREW, new CrewIncidentsNewPage()),
                form("/crew/incidents/{row}/edit", Access.CREW, new CrewIncidentEditPage()),
                form("/crew/cautions/new", Access.CREW, new CrewCautionsNewPage()),
                form("/crew/cautions/{row}/edit", Access.CREW, new CrewCautionEditPage()),
                form("/crew/settings", Access.CREW, new CrewSettingsPage()),
                form("/crew/history", Access.CREW, Access.HELPER, new CrewHistoryPage()),
                form("/crew/history/removed", Access.CREW, new CrewHistoryRemovedPage()),
                form("/crew/history/things/{thing}/{row}", Access.CREW, new CrewHistoryThingPage())));
        if (app.templates().areEdited()) {
            all.add(sheet("/crew/marks", Access.CREW, new CrewMarksPage()));
        }
        pages = List.copyOf(all);
        PublicPages log = new PublicPages(app.templates(), Site.copies(app.folder()));
        others = List.of(
                new Other("/", Access.PUBLIC, request -> Answer.to(request.home())),
                new Other("/ahead/state", Access.CREW, new AheadState()),
                new Other("/week/state", Access.HELPER, new AheadState()),
                new Other("/reach", Access.PUBLIC, new Reach()),
                new Other("/newer", Access.HELPER, new Newer()),
                new Other("/css/{name}", Access.PUBLIC, new Styles(app.templates())),
                new Other("/static/<file>", Access.PUBLIC, new Statics()),
                new Other("/calendars/{secret}/{feed}", Access.PUBLIC, new CalendarFeed(app.nanos())),
                new Other("/notes/{id}/file", Access.CREW, new NoteText()),
                new Other("/photos/{file}", Access.CREW, new Photos(PhotoFiles.Size.PAGE)),
                new Other("/photos/small/{file}", Access.CREW, new Photos(PhotoFiles.Size.SMALL)),
                new Other("/public", Access.PUBLIC, log),
                new Other("/public/<file>", Access.PUBLIC, log),
                new Other("/build/gifts.csv", Access.CREW, new GiftsSheet()),
                new Other("/funds/books.csv", Access.CREW, new BooksSheet()),
                new Other("/funds/supporters.csv", Access.CREW, new SupportersSheet()),
                new Other("/funds/orders.csv", Access.CREW, new OrdersSheet()),
                new Other("/funds/months/{month}/statement.csv", Access.CREW, new MonthSheet()),
                new Other("/funds/years/{year}/folder.zip", Access.CREW, new YearZip()),
                new Other("/receipts/{file}", Access.CREW, new Receipts()));
    }

    Routes(List<Line> pages, List<Other> others) {
        this.pages = List.copyOf(pages);
        this.others = List.copyOf(others);
    }

    private static Line sheet(String path, Access access, Page page) {
        return new Line(path, access, false, page);
    }

    private static Line form(String path, Access access, Page page) {
        return new Line(path, access, true, page);
    }

    /** A page that some may only see. */
    private static Line form(String path, Access access, Access submitting, Page page) {
        return new Line(path, access, true, submitting, false, page);
    }

    /** A page whose buttons open or close doors for others, or take all of the project away with them. */
    private static Line confirmed(String path, Page page) {
        return new Line(path, Access.CREW, true, Access.CREW, true, page);
    }

    /** Every page, in the order of the sheets. */
    public List<Line> pages() {
        return pages;
    }

    /** Style sheets, scripts, fonts, pictures, JSON, redirects: no template belongs to them. */
    public List<Other> others() {
        return others;
    }

    static Optional<String> sampleNotice(App app) {
        return app.sample() ? Optional.of(SAMPLE) : Optional.empty();
    }
}

@echo off
rem Starts the command line without a display and without a workspace; what the platform caches goes into a folder that is removed at the end.
rem The platform keeps words such as -data or -application for itself wherever they stand, so each word of the user goes through marked.
setlocal
set "here=%~dp0"
set "cache=%TEMP%\cradlewright-%RANDOM%%RANDOM%"
mkdir "%cache%"
set "words="
:next
if [%1]==[] goto run
set words=%words% "=%~1"
shift /1
goto next
:run
for %%f in ("%here%plugins\org.eclipse.equinox.launcher_*.jar") do set "launcher=%%f"
java -Dfile.encoding=UTF-8 -Djava.awt.headless=true "-Dosgi.configuration.area=%cache%" "-Dosgi.sharedConfiguration.area=%here%configuration" -Dosgi.configuration.cascaded=true -Dosgi.instance.area=@none -Dosgi.user.area=@none "-Dcradlewright.home=%here%." -Dcradlewright.marked=true -jar "%launcher%" -nosplash -application cradlewright.cli.app%words%
set "code=%ERRORLEVEL%"
rmdir /s /q "%cache%"
exit /b %code%
